import { useMemo } from 'react';
import { expectedReadings, type Design, type Results } from '../../../core';
import { Bars, type Bar } from '../../drawing/bars';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import { useUnits } from '../../parts/unit-preferences';
import { format, formatDifference, type UnitPreferences } from '../../units';
import type { FigureProps } from '../worksheet';
import { compared, verdict } from './expected';

const kinds = { ohms: 'resistance', volts: 'voltage', hertz: 'frequency' } as const;
const tones = { good: 'good', fair: 'warn', bad: 'bad' } as const;

export function Figure({ design, results }: FigureProps) {
  const units = useUnits();
  const chart = useMemo(() => expectedChart(design, results), [design, results]);
  const bars = useMemo(() => deviationBars(design, results, units), [design, results, units]);
  return (
    <Plates of="charts">
      {bars.length > 0 && (
        <Bars
          title="Measured against expected"
          bars={bars}
          note="The upright mark is what the meter must read; the bar is what it did read."
        />
      )}
      <LineChart chart={chart} note="Turn the shaft by hand or drill, read the speed, and find the volts the meter must show." />
    </Plates>
  );
}

/** Every expected value stands in the middle. */
const EXPECTED_AT = 1 / 2;

function deviationBars(design: Design, results: Results, units: UnitPreferences): Bar[] {
  return (design.bench ?? []).flatMap((reading) =>
    compared(reading, design, results).map((comparison) => ({
      label: `${reading.label || `${reading.on} ${reading.number}`}, ${comparison.what}`,
      length: EXPECTED_AT * (1 + comparison.deviation),
      mark: EXPECTED_AT,
      value: `${format(comparison.measured, kinds[comparison.what], units)}, expected ${format(comparison.expected, kinds[comparison.what], units)}`,
      word: formatDifference(comparison.deviation, 'percent', units),
      tone: tones[verdict(comparison).tone],
    })),
  );
}

function expectedChart(design: Design, results: Results): Chart {
  const still = { rpm: 0, coil: 0, phase: 0, line: 0 };
  const speeds = [still, ...expectedReadings(design, results).speeds];
  return {
    title: 'AC volts with nothing connected',
    x: { label: 'Speed', kind: 'rpm', values: speeds.map((s) => s.rpm) },
    y: { label: 'Volts, RMS', kind: 'voltage', fromZero: true },
    series: [
      { label: 'One coil', values: speeds.map((s) => s.coil) },
      { label: 'One phase', values: speeds.map((s) => s.phase) },
      { label: 'Between two terminals', values: speeds.map((s) => s.line) },
    ],
  };
}
