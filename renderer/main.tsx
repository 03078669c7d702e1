import '@fontsource/roboto/latin-400.css';
import '@fontsource/roboto/latin-500.css';
import '@fontsource/roboto/greek-400.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startMenu } from './actions/menu';
import { openWaiting } from './actions/open';
import { App } from './app';
import { startAutosave } from './state/autosave';
import { designStore } from './state/design';
import { startRecent } from './state/recent';
import { startSolving } from './state/results';
import { startSettings } from './state/settings';
import { setView, viewStore } from './state/view';
import { worksheets } from './worksheets/registry';

startSolving();
const isFirstRun = await startSettings(worksheets.map((w) => w.id));
startRecent();
await startAutosave();
startMenu();
await openWaiting().catch(() => undefined);
if (isFirstRun && !viewStore.getState().dialog && !designStore.getState().file) setView({ dialog: { kind: 'start' } });

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no #root');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
