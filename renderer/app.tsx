import Box from '@mui/material/Box';
import CssBaseline from '@mui/material/CssBaseline';
import { ThemeProvider } from '@mui/material/styles';
import useMediaQuery from '@mui/material/useMediaQuery';
import { useEffect, useMemo } from 'react';
import { attempt } from './actions/attempt';
import { listenForKeys } from './actions/keys';
import { actions } from './actions/registry';
import { isMac } from './desktop';
import { UnitProvider } from './parts/unit-preferences';
import { Dialogs } from './shell/dialogs';
import { HeadlineStrip } from './shell/headline-strip';
import { MessageBar } from './shell/message-bar';
import { Navigation } from './shell/navigation';
import { StatusLine } from './shell/status-line';
import { TopBar } from './shell/top-bar';
import { useView } from './state/view';
import { NARROW, themeFor } from './theme';
import { Page } from './worksheets/page';
import { worksheets } from './worksheets/registry';

/** Where there is little room, as at 200 %, the page scrolls as a whole and its parts stand below one another. */
const frame = {
  display: 'grid',
  gridTemplateColumns: 'minmax(0, 1fr)',
  gridTemplateRows: 'auto auto minmax(0, 1fr) auto',
  height: '100vh',
  [NARROW]: { height: 'auto' },
};
const middle = {
  display: 'grid',
  gridTemplateColumns: '196px minmax(0, 1fr)',
  minHeight: 0,
  [NARROW]: { gridTemplateColumns: 'minmax(0, 1fr)' },
};

export function App() {
  const choice = useView((s) => s.theme);
  const systemDark = useMediaQuery('(prefers-color-scheme: dark)', { noSsr: true });
  const mode = choice === 'system' ? (systemDark ? 'dark' : 'light') : choice;
  const theme = useMemo(() => themeFor(mode), [mode]);
  const [length, wire, temperature] = [useView((s) => s.length), useView((s) => s.wire), useView((s) => s.temperature)];
  const units = useMemo(() => ({ length, wire, temperature }), [length, wire, temperature]);
  const current = useView((s) => s.worksheet);
  const worksheet = worksheets.find((w) => w.id === current) ?? worksheets[0];

  useEffect(() => listenForKeys(actions, isMac(), (action) => void attempt(action)), []);

  return (
    <ThemeProvider theme={theme}>
      <CssBaseline enableColorScheme />
      <UnitProvider value={units}>
        <Box sx={frame}>
          <TopBar />
          <HeadlineStrip />
          <Box sx={middle}>
            <Navigation />
            {worksheet && <Page key={worksheet.id} worksheet={worksheet} />}
          </Box>
          <StatusLine />
        </Box>
        <Dialogs />
        <MessageBar />
      </UnitProvider>
    </ThemeProvider>
  );
}
