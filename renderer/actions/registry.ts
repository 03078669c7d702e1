import type { Action } from './action';
import { compare } from './compare';
import { exportTables } from './export';
import { goToWorksheet } from './go-to-worksheet';
import { newDesign } from './new-design';
import { newFromDemo } from './new-from-demo';
import { newFromHand } from './new-from-hand';
import { open } from './open';
import { openRecent } from './open-recent';
import { pin } from './pin';
import { printReport, printSheet, printTemplates } from './print';
import { redo } from './redo';
import { save } from './save';
import { saveAs } from './save-as';
import { sideBySide } from './side-by-side';
import { theme } from './theme';
import { undo } from './undo';
import { lengthUnit, temperatureUnit, wireSizes } from './units';

/** In the order of the menus. */
export const actions: readonly Action[] = [
  newDesign,
  newFromHand,
  newFromDemo,
  open,
  openRecent,
  save,
  saveAs,
  printSheet,
  printReport,
  printTemplates,
  ...exportTables,
  undo,
  redo,
  lengthUnit,
  wireSizes,
  temperatureUnit,
  theme,
  pin,
  compare,
  sideBySide,
  ...goToWorksheet,
];
