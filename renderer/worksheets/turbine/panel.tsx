import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import type { Quantity } from '../../../core';
import { EditableTable } from '../../parts/editable-table';
import { AddIcon } from '../../parts/icons';
import { QuantityCell } from '../../parts/quantity-cell';
import { Section } from '../../parts/section';
import { editEntry, editList, setFault, settleEntry, useDesign } from '../../state/design';
import { quantityAt } from '../../words';
import type { FigureProps } from '../worksheet';
import { OperatingPoints } from './operating-points';
import { YearPanel } from './year-panel';

type Point = [tipSpeedRatio: number, powerCoefficient: number];

const columns: { quantity: Quantity; range: { min: number; max: number } }[] = [
  { quantity: { label: 'Tip-speed ratio', unit: 'ratio', meaning: 'Blade-tip speed over wind speed' }, range: { min: 0, max: 30 } },
  { quantity: { label: 'Power coefficient', unit: 'ratio', meaning: 'Share of the wind’s power' }, range: { min: -1, max: 1 } },
];
const FEWEST = 3; // as the design file allows

/** Where the pair settles, and the wheel's own curve. */
export function Panel({ design, results }: FigureProps) {
  return (
    <>
      <OperatingPoints design={design} results={results} />
      <YearPanel design={design} />
      <MeasuredCurve />
    </>
  );
}

/** The wheel's own curve as measured, in place of the three numbers. */
function MeasuredCurve() {
  const turbine = useDesign((s) => s.design.turbine);
  const faults = useDesign((s) => s.faults);
  const points = turbine.curve;
  const edit = (next: (list: Point[]) => Point[]) => editList('turbine.curve', next, () => 'measured curve');
  const act = (next: (list: Point[]) => Point[]) => {
    edit(next);
    settleEntry();
  };
  const end = () => editEntry('turbine.curve', undefined, () => 'measured curve');
  const begin = () => {
    const { tipSpeedRatio, peakCp, runawayRatio } = turbine;
    act(() => [
      [0, 0],
      [tipSpeedRatio, peakCp],
      [runawayRatio, 0],
    ]);
  };
  const add = () =>
    act((list) => {
      const last = list.at(-1) ?? [0, 0];
      return [...list, [last[0] + 1, last[1]]];
    });
  return (
    <Section title={quantityAt('turbine.curve').label}>
      {points ? (
        <>
          <EditableTable
            columns={columns.map(({ quantity, range }, j) => ({
              head: quantity.label,
              align: 'right' as const,
              cell: (point: Point, i: number) => (
                <QuantityCell
                  name={`${quantity.label} of point ${i + 1}`}
                  quantity={quantity}
                  range={range}
                  value={point[j]}
                  onChange={(value) => edit((list) => list.map((p, k) => (k === i ? changed(p, j, value ?? 0) : p)))}
                  fault={faults[`turbine.curve[${i}][${j}]`]}
                  onFault={(message) => setFault(`turbine.curve[${i}][${j}]`, message)}
                  onSettle={settleEntry}
                />
              ),
            }))}
            rows={points}
            nameOf={(_, i) => `point ${i + 1}`}
            onRemove={(i) => act((list) => list.filter((_, k) => k !== i))}
            fewest={FEWEST}
            maxWidth={420}
          />
          <Button startIcon={<AddIcon />} onClick={() => add()} sx={{ mt: 1 }}>
            Add a point
          </Button>
          <Button onClick={end} sx={{ mt: 1 }}>
            Go back to the three numbers
          </Button>
        </>
      ) : (
        <Box sx={{ display: 'flex', alignItems: 'center', gap: 1.5, py: 1, fontSize: 13, color: 'text.secondary' }}>
          The wheel is described by its three numbers.
          <Button variant="outlined" onClick={begin}>
            Enter a measured curve
          </Button>
        </Box>
      )}
    </Section>
  );
}

const changed = (point: Point, place: number, value: number): Point => (place === 0 ? [value, point[1]] : [point[0], value]);
