import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import InputBase from '@mui/material/InputBase';
import NativeSelect from '@mui/material/NativeSelect';
import { attempt } from '../../actions/attempt';
import { printSheet } from '../../actions/print';
import { boxStyle } from '../../parts/box-style';
import { fieldId, FieldRow } from '../../parts/field-row';
import { PrintIcon } from '../../parts/icons';
import { Section } from '../../parts/section';
import { TextInput } from '../../parts/text-input';
import { editEntry, settleEntry } from '../../state/design';
import { setView, useView, type Paper } from '../../state/view';
import { NARROW } from '../../theme';
import { quantityAt } from '../../words';
import type { FigureProps } from '../worksheet';
import { Preview } from './preview';

/** What goes on the paper, and the button that makes it. */
export function Panel({ design, results }: FigureProps) {
  const paper = useView((s) => s.paper);
  const paperId = fieldId('paper');
  return (
    <Box
      sx={{
        display: 'grid',
        gridTemplateColumns: '332px minmax(0, 860px)',
        columnGap: 3,
        [NARROW]: { gridTemplateColumns: 'minmax(0, 1fr)' },
      }}
    >
      <Section title="Paper">
        <Box sx={{ pt: 1 }}>
          <TextInput
            path="title"
            label={quantityAt('title').label}
            meaning={quantityAt('title').meaning}
            value={design.title}
            maxLength={200}
            onChange={(title) => editEntry('title', title, () => 'title', true)}
            onSettle={settleEntry}
          />
          <FieldRow id={paperId} label="Paper" meaning="The size in the printer">
            <NativeSelect
              value={paper}
              disableUnderline
              inputProps={{ id: paperId }}
              onChange={(event) => setView({ paper: event.target.value as Paper })}
              sx={boxStyle}
            >
              <option value="a4">A4</option>
              <option value="letter">Letter</option>
            </NativeSelect>
          </FieldRow>
          <Notes notes={design.notes ?? ''} />
          <Button variant="contained" disableElevation startIcon={<PrintIcon />} onClick={() => void attempt(printSheet)} sx={{ mt: 1.5 }}>
            Save the sheet as PDF
          </Button>
        </Box>
      </Section>
      <Section title="On the sheet">
        <Box sx={{ pt: 1 }}>
          <Preview design={design} results={results} />
        </Box>
      </Section>
    </Box>
  );
}

function Notes({ notes }: { notes: string }) {
  const { label, meaning } = quantityAt('notes');
  const id = fieldId('notes');
  return (
    <Box data-meaning={meaning} sx={{ pt: 0.5 }}>
      <Box component="label" htmlFor={id} sx={{ fontSize: 13 }}>
        {label}
      </Box>
      <InputBase
        id={id}
        multiline
        minRows={3}
        maxRows={10}
        value={notes}
        onChange={(event) => editEntry('notes', event.target.value || undefined, () => 'notes', true)}
        onBlur={settleEntry}
        slotProps={{ input: { maxLength: 20_000 } }}
        sx={[boxStyle as object, { height: 'auto', px: 1, py: 0.5, mt: 0.5, '& textarea:focus-visible': { outline: 'none' } }]}
      />
    </Box>
  );
}
