import Box from '@mui/material/Box';
import ButtonBase from '@mui/material/ButtonBase';
import IconButton from '@mui/material/IconButton';
import InputBase from '@mui/material/InputBase';
import NativeSelect from '@mui/material/NativeSelect';
import TableCell from '@mui/material/TableCell';
import TableRow from '@mui/material/TableRow';
import { deviationsOf, percentOff, toneOf, toneWords, type BenchReport, type Compared, type Reading } from '../../../core';
import { boxStyle } from '../../parts/box-style';
import { MenuDownIcon, RemoveIcon } from '../../parts/icons';
import { QuantityCell } from '../../parts/quantity-cell';
import { useUnits } from '../../parts/unit-preferences';
import { setFault, settleEntry, useDesign } from '../../state/design';
import { entryUnit, format } from '../../units';
import { kindOf, rowsOf } from './figures';
import { columns, moreChoices, moreNumbers, type NumberEntry } from './reading-entries';

type On = Reading['on'];
const ons: Record<On, string> = { coil: 'coil', run: 'run of coils', phase: 'phase', line: 'two terminals', dc: 'DC side' };
const colors = { good: 'success.main', warn: 'warning.main', bad: 'error.main' } as const;

interface Props {
  reading: Reading;
  row: number;
  report: BenchReport | undefined;
  /** Columns of the table. */
  shown: typeof columns;
  isOpen: boolean;
  onOpen: () => void;
  onChange: (part: Partial<Reading>) => void;
  onRemove: () => void;
}

/** One reading: what was read, what it should have been, and below it what else there is to say. */
export function ReadingRow({ reading, row, report, shown, isOpen, onOpen, onChange, onRemove }: Props) {
  const name = `reading ${row + 1}`;
  const comparisons = rowsOf(report, row);
  const left = report?.leftOut.find((l) => l.row === row)?.why;
  return (
    <>
      <TableRow sx={{ '& td': { verticalAlign: 'top', ...(isOpen && { borderBottom: 0 }) } }}>
        <TableCell>
          <InputBase
            value={reading.label}
            onChange={(event) => onChange({ label: event.target.value })}
            onBlur={settleEntry}
            slotProps={{ input: { 'aria-label': `Note of ${name}`, maxLength: 80 } }}
            sx={[boxStyle as object, { minWidth: 84, '& input': { textAlign: 'left' } }]}
          />
        </TableCell>
        <TableCell>
          <Choice
            name={`What the meter was on in ${name}`}
            value={reading.on}
            choices={ons}
            onChange={(on) => onChange({ on: on as On })}
          />
        </TableCell>
        {shown.map((column) => (
          <TableCell key={column.key}>
            {column.on.includes(reading.on) && <NumberBox entry={column} reading={reading} row={row} onChange={onChange} />}
          </TableCell>
        ))}
        <Comparisons comparisons={comparisons} left={left} />
        <TableCell sx={{ whiteSpace: 'nowrap' }}>
          <ButtonBase
            aria-expanded={isOpen}
            aria-label={`More of ${name}`}
            title="Temperature, meter, load, wind, film"
            onClick={onOpen}
            sx={{ height: 28, px: 0.5, color: 'text.secondary', transform: isOpen ? 'rotate(180deg)' : undefined }}
          >
            <MenuDownIcon />
          </ButtonBase>
          <IconButton size="small" aria-label={`Remove ${name}`} onClick={onRemove}>
            <RemoveIcon />
          </IconButton>
        </TableCell>
      </TableRow>
      {isOpen && (
        <TableRow>
          <TableCell colSpan={shown.length + 6} sx={{ pb: 1.5 }}>
            <More reading={reading} row={row} onChange={onChange} />
          </TableCell>
        </TableRow>
      )}
    </>
  );
}

function More({ reading, row, onChange }: Pick<Props, 'reading' | 'row' | 'onChange'>) {
  const units = useUnits();
  const name = `reading ${row + 1}`;
  return (
    <Box
      sx={{ display: 'grid', gridTemplateColumns: 'repeat(auto-fill, minmax(148px, 1fr))', columnGap: 1.5, rowGap: 0.75, maxWidth: 1000 }}
    >
      {moreChoices
        .filter(({ on }) => on.includes(reading.on))
        .map(({ key, label, choices }) => (
          <Labelled key={key} label={label}>
            <Choice
              name={`${label} of ${name}`}
              value={reading[key] ?? Object.keys(choices)[0] ?? ''}
              choices={choices}
              onChange={(value) => onChange({ [key]: value })}
            />
          </Labelled>
        ))}
      {moreNumbers
        .filter(({ on }) => on.includes(reading.on))
        .map((entry) => {
          const unit = entryUnit(entry.quantity.unit, units);
          return (
            <Labelled key={entry.key} label={`${entry.quantity.label}${unit ? `, ${unit}` : ''}`} meaning={entry.quantity.meaning}>
              <NumberBox entry={entry} reading={reading} row={row} onChange={onChange} />
            </Labelled>
          );
        })}
    </Box>
  );
}

function Labelled({ label, meaning, children }: { label: string; meaning?: string; children: React.ReactNode }) {
  return (
    <Box title={meaning}>
      <Box sx={{ fontSize: 12, color: 'text.secondary', pb: 0.25 }}>{label}</Box>
      {children}
    </Box>
  );
}

interface BoxProps {
  entry: NumberEntry;
  reading: Reading;
  row: number;
  onChange: (part: Partial<Reading>) => void;
}

function NumberBox({ entry: { key, quantity, range }, reading, row, onChange }: BoxProps) {
  const units = useUnits();
  const fault = useDesign((s) => s.faults[`bench[${row}].${key}`]);
  return (
    <QuantityCell
      name={`${`${quantity.label} ${entryUnit(quantity.unit, units)}`.trim()} of reading ${row + 1}`}
      quantity={quantity}
      range={range}
      optional={key !== 'number'}
      value={reading[key]}
      onChange={(value) => onChange({ [key]: value })}
      fault={fault}
      onFault={(message) => setFault(`bench[${row}].${key}`, message)}
      onSettle={settleEntry}
    />
  );
}

interface ChoiceProps {
  name: string;
  value: string;
  choices: Record<string, string>;
  onChange: (value: string) => void;
}

function Choice({ name, value, choices, onChange }: ChoiceProps) {
  return (
    <NativeSelect
      value={value}
      disableUnderline
      inputProps={{ 'aria-label': name }}
      onChange={(event) => {
        onChange(event.target.value);
        settleEntry();
      }}
      sx={[boxStyle as object, { minWidth: 108 }]}
    >
      {Object.entries(choices).map(([key, word]) => (
        <option key={key} value={key}>
          {word}
        </option>
      ))}
    </NativeSelect>
  );
}

function Comparisons({ comparisons, left }: { comparisons: Compared[]; left: string | undefined }) {
  const units = useUnits();
  const lines = comparisons.map((c) => ({ ...c, tone: toneOf(deviationsOf(c)) }));
  const lineHeight = lines.length > 1 ? '20px' : '28px';
  return (
    <>
      <TableCell align="right">
        {lines.map((c) => (
          <Box key={c.figure} sx={{ whiteSpace: 'nowrap', lineHeight }}>
            {format(c.planned, kindOf[c.figure], units, 3)}
            <Box
              component="span"
              sx={{ color: 'text.secondary', fontSize: 12 }}
              title="Two standard deviations of meter, speed and winding"
            >
              {` ± ${format(2 * c.sigma, kindOf[c.figure], units, 2)}`}
            </Box>
          </Box>
        ))}
      </TableCell>
      <TableCell align="right">
        {lines.map((c) => (
          <Box key={c.figure} sx={{ whiteSpace: 'nowrap', lineHeight }}>
            {percentOff(c)}
          </Box>
        ))}
      </TableCell>
      <TableCell>
        {lines.map((c) => (
          <Box key={c.figure} sx={{ color: colors[c.tone], whiteSpace: 'nowrap', lineHeight }}>
            {toneWords(c.tone)}
          </Box>
        ))}
        {lines.length === 0 && <Box sx={{ color: 'text.secondary', minWidth: 120 }}>{left ?? 'enter ohms, or a speed and volts'}</Box>}
      </TableCell>
    </>
  );
}
