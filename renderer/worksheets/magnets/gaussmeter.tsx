import Box from '@mui/material/Box';
import Button from '@mui/material/Button';
import { useState } from 'react';
import { entryAt, remanenceFromReading, type Quantity } from '../../../core';
import { QuantityInput } from '../../parts/quantity-input';
import { rangeError, type NumberRange } from '../../parts/quantity-text';
import { useUnits } from '../../parts/unit-preferences';
import { editEntries, useDesign } from '../../state/design';
import { format } from '../../units';

const asked = {
  fluxDensity: {
    quantity: { label: 'Reading', unit: 'fluxDensity', meaning: 'Greatest value on the axis of one magnet lying alone, far from steel' },
    range: { min: 1e-4, max: 2 },
  },
  distance: {
    quantity: {
      label: 'Sensor from the pole face',
      unit: 'length',
      meaning: 'To the sensor’s own element, some way inside the probe; lay a plastic strip between, then half a millimetre matters less',
    },
    range: { min: 0, max: 0.3 },
  },
  temperature: {
    quantity: { label: 'Magnet’s temperature then', unit: 'temperature', meaning: 'Of the magnet as it was read' },
    range: { min: -40, max: 150 },
  },
} satisfies Record<string, { quantity: Quantity; range: { min: number; max: number } }>;

type Asked = keyof typeof asked;
const questions = Object.keys(asked) as Asked[];

/** Remanence from one gaussmeter reading, taken over as one step to undo. */
export function Gaussmeter() {
  const [isOpen, setOpen] = useState(false);
  if (isOpen) return <Reading onClose={() => setOpen(false)} />;
  return (
    <Button size="small" onClick={() => setOpen(true)} sx={button}>
      Remanence from a gaussmeter…
    </Button>
  );
}

function Reading({ onClose }: { onClose: () => void }) {
  const units = useUnits();
  const magnets = useDesign((s) => s.design.magnets);
  const range = useDesign((s) => entryAt('magnets.remanence', s.design)?.number);
  const [reading, setReading] = useState<Record<Asked, number | undefined>>({ fluxDensity: undefined, distance: 0.002, temperature: 20 });
  const [faults, setFaults] = useState<Partial<Record<Asked, string>>>({});
  const { fluxDensity, distance, temperature } = reading;
  const known = fluxDensity !== undefined && distance !== undefined && temperature !== undefined;
  const remanence = known ? remanenceFromReading(magnets, { fluxDensity, distance, temperature }) : undefined;
  const shown = (value: number) => format(value, 'fluxDensity', units);
  const odd = remanence !== undefined && range ? whatIsOdd(remanence, range, shown) : null;
  const usable = remanence !== undefined && odd === null && Object.values(faults).every((fault) => fault === undefined);
  const take = () => {
    if (remanence === undefined) return;
    const rounded = Number(remanence.toFixed(4));
    editEntries({ 'magnets.remanence': rounded }, `remanence from a reading, ${shown(magnets.remanence)} → ${shown(rounded)}`);
    onClose();
  };
  return (
    <Box component="section" aria-label="Gaussmeter" sx={{ pl: 1.5, mb: 1, borderLeft: 2, borderColor: 'divider' }}>
      {questions.map((name) => (
        <QuantityInput
          key={name}
          path={`gaussmeter.${name}`}
          {...asked[name]}
          value={reading[name]}
          optional={name === 'fluxDensity'}
          fault={faults[name]}
          onChange={(value) => setReading((now) => ({ ...now, [name]: value }))}
          onFault={(fault) => setFaults((now) => ({ ...now, [name]: fault ?? undefined }))}
          onSettle={nothing}
        />
      ))}
      <Box role="status" sx={{ fontSize: 13, minHeight: 20, my: 0.5, color: odd ? 'error.main' : 'text.secondary' }}>
        {usable && `${shown(remanence)} at 20 °C; ${change(remanence, magnets.remanence)} what is entered.`}
        {odd}
      </Box>
      <Button size="small" onClick={take} disabled={!usable} sx={button}>
        Take it over
      </Button>
      <Button size="small" onClick={onClose} sx={button}>
        Cancel
      </Button>
    </Box>
  );
}

/** Why no magnet reads like that, or null. */
function whatIsOdd(remanence: number, range: NumberRange, shown: (value: number) => string): string | null {
  if (!Number.isFinite(remanence)) return 'The loss per kelvin that is entered leaves no magnetism at that temperature.';
  const error = rangeError(remanence, range, shown);
  return error && `No magnet of this shape reads that. Its remanence ${error.replace('Must', 'must')} See to the distance and the unit.`;
}

/** As in "2.4 % over". */
function change(value: number, entered: number): string {
  const percent = 100 * (value / entered - 1);
  return Math.abs(percent) < 0.05 ? 'just' : `${Math.abs(percent).toFixed(1)} % ${percent > 0 ? 'over' : 'under'}`;
}

const nothing = () => undefined;
const button = { py: 0, px: 0.5, ml: -0.5, mb: 0.5 };
