import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import Dialog from '@mui/material/Dialog';
import DialogActions from '@mui/material/DialogActions';
import DialogContent from '@mui/material/DialogContent';
import DialogTitle from '@mui/material/DialogTitle';
import InputBase from '@mui/material/InputBase';
import { useState } from 'react';
import { readingsFromCsv, type Reading } from '../../../core';

interface Props {
  isOpen: boolean;
  onClose: () => void;
  onTake: (readings: Reading[]) => void;
}

const example = 'on;number;rpm;ohms;volts\ncoil;1;150;0,42;3,1\nline;1;150;2,6;15,9';

/** Readings from a spreadsheet or a file, looked at before they are taken. */
export function PasteDialog({ isOpen, onClose, onTake }: Props) {
  const [text, setText] = useState('');
  const { readings, problems } = readingsFromCsv(text);
  const take = () => {
    onTake(readings);
    setText('');
  };
  return (
    <Dialog open={isOpen} onClose={onClose} maxWidth="md" fullWidth aria-labelledby="paste-title">
      <DialogTitle id="paste-title" sx={{ fontSize: 16 }}>
        Paste readings
      </DialogTitle>
      <DialogContent>
        <Box sx={{ fontSize: 13, color: 'text.secondary', mb: 1 }}>
          A line of heads, then a line for each reading; tabs, semicolons or commas between. Heads: on (coil, run, phase, line or dc),
          number, to, rpm, speed by, hertz, ohms, volts, amps, meter, load, load ohms, load volts, temperature C, wind m/s, frames/s,
          accuracy %, note. An open circuit is “OL”.
        </Box>
        <InputBase
          multiline
          minRows={8}
          maxRows={16}
          autoFocus
          value={text}
          placeholder={example}
          onChange={(event) => setText(event.target.value)}
          slotProps={{ input: { 'aria-label': 'Readings as text', spellCheck: false } }}
          sx={{
            width: '100%',
            border: 1,
            borderColor: 'divider',
            borderRadius: '3px',
            p: 1,
            fontFamily: 'ui-monospace, monospace',
            fontSize: 12.5,
          }}
        />
        <Box component="label" sx={{ display: 'block', mt: 1, fontSize: 13 }}>
          or from a file:{' '}
          <input
            type="file"
            accept=".csv,.tsv,.txt,text/*"
            aria-label="Readings from a file"
            onChange={(event) => void event.target.files?.[0]?.text().then(setText)}
          />
        </Box>
        {text.trim() !== '' && (
          <Box role="status" sx={{ mt: 1.5, fontSize: 13 }}>
            {readings.length === 1 ? '1 reading' : `${readings.length} readings`} understood.
            {problems.length > 0 && (
              <Box component="ul" sx={{ m: 0, mt: 0.5, pl: 2.5, color: 'error.main' }}>
                {problems.slice(0, 12).map(({ line, column, message }, i) => (
                  <li key={i}>
                    Line {line}
                    {column ? `, ${column}` : ''}: {message}
                  </li>
                ))}
                {problems.length > 12 && <li>and {problems.length - 12} more</li>}
              </Box>
            )}
          </Box>
        )}
      </DialogContent>
      <DialogActions>
        <Button onClick={onClose}>Cancel</Button>
        <Button variant="contained" disabled={readings.length === 0} onClick={take}>
          Take {readings.length === 1 ? '1 reading' : `${readings.length} readings`}
        </Button>
      </DialogActions>
    </Dialog>
  );
}
