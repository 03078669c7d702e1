import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import InputBase from '@mui/material/InputBase';
import NativeSelect from '@mui/material/NativeSelect';
import { attempt } from '../../actions/attempt';
import { printSheet, printTemplates } from '../../actions/print';
import { boxStyle } from '../../parts/box-style';
import { fieldId, FieldRow } from '../../parts/field-row';
import { PrintIcon } from '../../parts/icons';
import { TextInput } from '../../parts/text-input';
import { editEntry, settleEntry, useDesign } from '../../state/design';
import { setView, useView, type Paper as Size } from '../../state/view';
import { quantityAt } from '../../words';

/** What goes on the paper, and the buttons that make it. */
export function Paper() {
  const title = useDesign((s) => s.design.title);
  const notes = useDesign((s) => s.design.notes);
  const paper = useView((s) => s.paper);
  const paperId = fieldId('paper');
  return (
    <>
      <TextInput
        path="title"
        label={quantityAt('title').label}
        meaning={quantityAt('title').meaning}
        value={title}
        maxLength={200}
        onChange={(text) => editEntry('title', text, () => 'title', true)}
        onSettle={settleEntry}
      />
      <FieldRow id={paperId} label="Paper" meaning="The size in the printer">
        <NativeSelect
          value={paper}
          disableUnderline
          inputProps={{ id: paperId }}
          onChange={(event) => setView({ paper: event.target.value as Size })}
          sx={boxStyle}
        >
          <option value="a4">A4</option>
          <option value="letter">Letter</option>
        </NativeSelect>
      </FieldRow>
      <Notes notes={notes ?? ''} />
      <Button
        variant="contained"
        disableElevation
        startIcon={<PrintIcon />}
        onClick={() => void attempt(printSheet)}
        sx={{ mt: 1.5, width: '100%' }}
      >
        Save the sheet as PDF
      </Button>
      <Button variant="outlined" onClick={() => void attempt(printTemplates)} sx={{ mt: 1, width: '100%' }}>
        Save templates at natural size
      </Button>
    </>
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
