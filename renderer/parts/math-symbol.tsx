import Box from '@mui/material/Box';

/** A quantity's symbol, as in B_r: what follows the underscore is set below the line. */
export function MathSymbol({ of }: { of: string }) {
  const [letter, below] = of.split('_');
  return (
    <Box component="i" aria-hidden sx={{ ml: 0.75, color: 'text.secondary', fontFamily: 'Georgia, serif' }}>
      {letter}
      {below && (
        <Box component="sub" sx={{ fontSize: '0.75em', lineHeight: 0 }}>
          {below}
        </Box>
      )}
    </Box>
  );
}
