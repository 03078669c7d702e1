import Button from '@mui/material/Button';
import InputBase from '@mui/material/InputBase';
import NativeSelect from '@mui/material/NativeSelect';
import type { Quantity, Reel } from '../../../core';
import { boxStyle } from '../../parts/box-style';
import { EditableTable, type EditableColumn } from '../../parts/editable-table';
import { AddIcon } from '../../parts/icons';
import { QuantityCell } from '../../parts/quantity-cell';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { editList, setFault, settleEntry, useDesign } from '../../state/design';
import { entryUnit } from '../../units';
import { choiceWord, quantityAt } from '../../words';

type NumberKey = 'conductorDiameter' | 'overallDiameter' | 'mass' | 'price';

const mass: Quantity = { label: 'Wire left', unit: 'mass', meaning: 'Metal on the reel' };
const price: Quantity = { label: 'Price per kg', unit: 'price', meaning: 'In any money, the same for all reels' };
const columns: { key: NumberKey; quantity: Quantity; range: { min: number; max: number }; optional?: boolean }[] = [
  { key: 'conductorDiameter', quantity: quantityAt('winding.wire.conductorDiameter'), range: { min: 0.05e-3, max: 6e-3 } },
  { key: 'overallDiameter', quantity: quantityAt('winding.wire.overallDiameter'), range: { min: 0.05e-3, max: 7e-3 } },
  { key: 'mass', quantity: mass, range: { min: 0, max: 1000 } },
  { key: 'price', quantity: price, range: { min: 0, max: 1e6 }, optional: true },
];

/** The reels, each line to be edited in place. */
export function Shelf({ reels }: { reels: Reel[] }) {
  const units = useUnits();
  const faults = useDesign((s) => s.faults);
  const wire = useDesign((s) => s.design.winding.wire);
  const edit = (next: (list: Reel[]) => Reel[]) => editList('shelf', next, () => 'reels on the shelf');
  const change = (i: number, part: Partial<Reel>) => edit((list) => list.map((reel, j) => (i === j ? { ...reel, ...part } : reel)));
  const add = () => {
    const { metal, conductorDiameter, overallDiameter } = wire;
    edit((list) => [...list, { label: `Reel ${list.length + 1}`, metal, conductorDiameter, overallDiameter, mass: 5 }]);
    settleEntry();
  };
  const words: EditableColumn<Reel>[] = [
    {
      head: 'Reel',
      cell: (reel, i) => (
        <InputBase
          value={reel.label}
          onChange={(event) => change(i, { label: event.target.value })}
          onBlur={settleEntry}
          slotProps={{ input: { 'aria-label': `Name of reel ${i + 1}`, maxLength: 80 } }}
          sx={[boxStyle as object, { minWidth: 150, '& input': { textAlign: 'left' } }]}
        />
      ),
    },
    {
      head: 'Metal',
      cell: (reel, i) => (
        <NativeSelect
          value={reel.metal}
          disableUnderline
          inputProps={{ 'aria-label': `Metal of ${reel.label}` }}
          onChange={(event) => {
            change(i, { metal: event.target.value as Reel['metal'] });
            settleEntry();
          }}
          sx={boxStyle}
        >
          <option value="copper">{choiceWord('copper')}</option>
          <option value="aluminium">{choiceWord('aluminium')}</option>
        </NativeSelect>
      ),
    },
  ];
  const numbers = columns.map(({ key, quantity, range, optional }): EditableColumn<Reel> => {
    const unit = entryUnit(quantity.unit, units);
    return {
      head: unit ? `${quantity.label}, ${unit}` : quantity.label,
      align: 'right',
      cell: (reel, i) => (
        <QuantityCell
          name={`${quantity.label} of ${reel.label}`}
          quantity={quantity}
          range={range}
          optional={optional}
          value={reel[key]}
          onChange={(value) => change(i, { [key]: value })}
          fault={faults[`shelf[${i}].${key}`]}
          onFault={(message) => setFault(`shelf[${i}].${key}`, message)}
          onSettle={settleEntry}
        />
      ),
    };
  });
  const remove = (i: number) => {
    edit((list) => list.filter((_, j) => j !== i));
    settleEntry();
  };
  return (
    <Section title="Reels in hand">
      {reels.length > 0 && (
        <EditableTable columns={[...words, ...numbers]} rows={reels} nameOf={({ label }) => label} onRemove={remove} maxWidth={860} />
      )}
      <Button startIcon={<AddIcon />} onClick={add} sx={{ mt: 1 }}>
        Add a reel
      </Button>
    </Section>
  );
}
