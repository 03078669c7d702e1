import { createTheme, type Theme } from '@mui/material/styles';

const tones = {
  light: {
    ground: '#eceae4',
    panel: '#f8f7f3',
    well: '#ffffff',
    rule: '#d3cfc4',
    edge: '#8b877c',
    ink: '#1c2224',
    faint: '#575d5e',
    accent: '#96461a',
    accentHover: '#7c3813',
    onAccent: '#ffffff',
    good: '#22683f',
    warn: '#7d5200',
    bad: '#a8261c',
  },
  dark: {
    ground: '#14181a',
    panel: '#1b2022',
    well: '#111416',
    rule: '#333a3d',
    edge: '#7a8387',
    ink: '#e4e6e3',
    faint: '#a0a8a9',
    accent: '#e79a63',
    accentHover: '#f3b487',
    onAccent: '#14181a',
    good: '#7cc796',
    warn: '#e2b75a',
    bad: '#f2897e',
  },
} as const;

/** Little room: a small window, or a large one at 200 %. */
export const NARROW = '@media (max-width: 900px)';

export type Tones = (typeof tones)[keyof typeof tones];

declare module '@mui/material/styles' {
  interface Palette {
    tones: Tones;
  }
  interface PaletteOptions {
    tones?: Tones;
  }
}

/** Drawing-office paper and copper by day, an instrument panel by night. */
export function themeFor(mode: 'light' | 'dark'): Theme {
  const t = tones[mode];
  return createTheme({
    palette: {
      mode,
      tones: t,
      primary: { main: t.accent, dark: t.accentHover, contrastText: t.onAccent },
      error: { main: t.bad },
      warning: { main: t.warn },
      success: { main: t.good },
      info: { main: t.faint },
      text: { primary: t.ink, secondary: t.faint },
      divider: t.rule,
      background: { default: t.ground, paper: t.panel },
    },
    shape: { borderRadius: 3 },
    spacing: 8,
    typography: {
      fontFamily: 'Roboto, system-ui, sans-serif',
      fontSize: 13,
      h1: { fontSize: 19, fontWeight: 500, letterSpacing: 0 },
      h2: { fontSize: 11.5, fontWeight: 500, letterSpacing: '0.09em', textTransform: 'uppercase', color: t.faint },
      body1: { fontSize: 13.5, lineHeight: 1.45 },
      body2: { fontSize: 12.5, lineHeight: 1.4 },
      button: { textTransform: 'none', fontSize: 13 },
    },
    transitions: {
      duration: { shortest: 80, shorter: 90, short: 100, standard: 120, complex: 140, enteringScreen: 100, leavingScreen: 80 },
    },
    components: {
      MuiCssBaseline: {
        styleOverrides: {
          body: { fontVariantNumeric: 'tabular-nums', scrollbarColor: `${t.edge} transparent` },
          // For style sheets, whose rules cost nothing when a row is drawn anew.
          ':root': Object.fromEntries(Object.entries(t).map(([name, colour]) => [`--${name}`, colour])),
          '#root': { height: '100vh' },
          ':focus-visible': { outline: `2px solid ${t.accent}`, outlineOffset: 1 },
          '@media (prefers-reduced-motion: reduce)': {
            '*, *::before, *::after': { transition: 'none !important', animation: 'none !important', scrollBehavior: 'auto !important' },
          },
        },
      },
      MuiButtonBase: {
        defaultProps: { disableRipple: true },
        styleOverrides: {
          root: {
            fontFamily: 'inherit',
            fontSize: 'inherit',
            letterSpacing: 'inherit',
            // The library takes the outline away from every button.
            '&:focus-visible': { outline: `2px solid ${t.accent}`, outlineOffset: 1 },
          },
        },
      },
      MuiPaper: { defaultProps: { elevation: 0 }, styleOverrides: { root: { backgroundImage: 'none' } } },
      MuiTooltip: {
        defaultProps: { enterDelay: 500, enterNextDelay: 200, disableInteractive: true },
        styleOverrides: { tooltip: { background: t.ink, color: t.panel, fontSize: 12, maxWidth: 280 } },
      },
      MuiDialog: { styleOverrides: { paper: { border: `1px solid ${t.edge}` } } },
      MuiMenu: { styleOverrides: { paper: { border: `1px solid ${t.edge}` } } },
      MuiMenuItem: { styleOverrides: { root: { fontSize: 13, minHeight: 30, paddingTop: 3, paddingBottom: 3 } } },
      MuiTableCell: {
        styleOverrides: { root: { padding: '3px 8px', borderColor: t.rule, fontSize: 13 }, head: { color: t.faint, fontSize: 12 } },
      },
      MuiButton: { styleOverrides: { root: { minWidth: 0, padding: '3px 10px' } } },
    },
  });
}
