import '@fontsource/roboto/latin-400.css';
import '@fontsource/roboto/latin-500.css';
import '@fontsource/roboto/greek-400.css';
import { StrictMode } from 'react';
import { createRoot } from 'react-dom/client';
import { startMenu } from './actions/menu';
import { openWaiting } from './actions/open';
import { App } from './app';
import { startAutosave } from './state/autosave';
import { startSolving } from './state/results';
import { startSettings } from './state/settings';
import { worksheets } from './worksheets/registry';

startSolving();
await startSettings(worksheets.map((w) => w.id));
await startAutosave();
startMenu();
await openWaiting().catch(() => undefined);

const root = document.getElementById('root');
if (!root) throw new Error('index.html has no #root');
createRoot(root).render(
  <StrictMode>
    <App />
  </StrictMode>,
);
