import { useMemo } from 'react';
import type { Design, Results } from '../../../core';
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
  const chart = useMemo(() => expectedChart(results), [results]);
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

/** Speeds that a hand or a drill reaches. [rpm] */
const speeds = [0, 60, 120, 200, 300, 400, 500];

function expectedChart({ emf, stages }: Results): Chart {
  const volts = (per1000: number) => speeds.map((rpm) => (per1000 * rpm) / 1000);
  return {
    title: 'AC volts with nothing connected',
    x: { label: 'Speed', kind: 'rpm', values: speeds },
    y: { label: 'Volts, RMS', kind: 'voltage', fromZero: true },
    series: [
      { label: 'One coil', values: volts(stages.emf.coilRmsPer1000rpm) },
      { label: 'One phase', values: volts(emf.phaseRmsPer1000rpm) },
      { label: 'Between two terminals', values: volts(emf.lineRmsPer1000rpm) },
    ],
  };
}
