import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Table from '@mui/material/Table';
import TableBody from '@mui/material/TableBody';
import TableCell from '@mui/material/TableCell';
import TableHead from '@mui/material/TableHead';
import TableRow from '@mui/material/TableRow';
import { cableChoices } from '../../../core';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editEntry, settleEntry } from '../../state/design';
import { format } from '../../units';
import { stepName } from '../step-name';
import type { FigureProps } from '../worksheet';

/** Sections a dealer has, each with what it would keep for itself at the rated current. */
export function Panel({ design, results }: FigureProps) {
  const units = useUnits();
  const { cableLoss, dcWatts } = results.stages.rated;
  const choices = cableChoices(design.cable, cableLoss, dcWatts);
  const use = (section: number) => {
    editEntry('cable.section', section, stepName);
    settleEntry();
  };
  return (
    <Section title="Cable sections">
      {choices.length === 0 ? (
        <Box sx={{ py: 1, color: 'text.secondary', fontSize: 13 }}>Nothing flows at rated wind, or the cable has no length.</Box>
      ) : (
        <>
          <Table size="small" sx={{ maxWidth: 560 }} aria-label="Cable sections">
            <TableHead>
              <TableRow>
                <TableCell align="right">Section</TableCell>
                <TableCell align="right">Drop</TableCell>
                <TableCell align="right">Keeps for itself</TableCell>
                <TableCell />
                <TableCell />
              </TableRow>
            </TableHead>
            <TableBody>
              {choices.map(({ section, drop, lost, enough }) => (
                <TableRow key={section} selected={section === design.cable.section}>
                  <TableCell align="right">{format(section, 'area', units, 3)}</TableCell>
                  <TableCell align="right">{format(drop, 'percent', units, 2)}</TableCell>
                  <TableCell align="right">{format(lost, 'power', units, 3)}</TableCell>
                  <TableCell sx={{ color: enough ? 'success.main' : 'warning.main' }}>{enough ? 'below 5 %' : 'too thin'}</TableCell>
                  <TableCell align="right">
                    {section === design.cable.section ? (
                      'this design'
                    ) : (
                      <Button
                        size="small"
                        onClick={() => use(section)}
                        sx={{ py: 0 }}
                        aria-label={`Use ${format(section, 'area', units, 3)}`}
                      >
                        Use
                      </Button>
                    )}
                  </TableCell>
                </TableRow>
              ))}
            </TableBody>
          </Table>
          <Box sx={{ pt: 0.75, fontSize: 12.5, color: 'text.secondary', maxWidth: 700 }}>
            Preferred sections of IEC 60228, at the amps of rated wind; 5 % is common practice, no source. The cable must also carry its
            amps without getting hot and suit its fuse: local codes rule.
          </Box>
        </>
      )}
    </Section>
  );
}
