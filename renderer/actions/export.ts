import { cuttingDrawings, dxfText, svgText, tableCsv, tableNames, type TableName } from '../../core';
import type { FileKind } from '../../electron/contract';
import { desktop } from '../desktop';
import { resultsStore } from '../state/results';
import { setView } from '../state/view';
import type { Action } from './action';
import { fileName } from './file-name';

const isSolved = () => resultsStore.getState().results !== null;

async function save(ending: string, kind: FileKind, text: string): Promise<void> {
  const title = resultsStore.getState().solvedFor?.title ?? '';
  const saved = await desktop.exportFile(fileName(`${title} ${ending}`, kind), kind, new TextEncoder().encode(text));
  if (saved) setView({ message: { severity: 'success', text: `Saved ${saved.name}` } });
}

export const exportTable = (name: TableName): Action => ({
  id: `export-${name.replace(' ', '-')}`,
  label: () => `${name.charAt(0).toUpperCase()}${name.slice(1)} (CSV)…`,
  group: 'File',
  enabled: isSolved,
  perform: async () => {
    const { results, solvedFor } = resultsStore.getState();
    if (results && solvedFor) await save(name, 'csv', tableCsv(name, solvedFor, results));
  },
});

export const exportTables: readonly Action[] = tableNames.map(exportTable);

const writers = { dxf: dxfText, svg: svgText };

/** One part to cut; which parts there are, the design says. */
export const exportPart = (name: string, kind: keyof typeof writers): Action => ({
  id: `export-${name}-${kind}`,
  label: () => `${name} (${kind.toUpperCase()})…`,
  group: 'File',
  enabled: isSolved,
  perform: async () => {
    const { results, solvedFor } = resultsStore.getState();
    if (!results || !solvedFor) return;
    const part = cuttingDrawings(solvedFor, results).find((p) => p.name === name);
    if (!part) throw new Error(`the design has no part called ${name} any more`);
    await save(name, kind, writers[kind](part.drawing));
  },
});
