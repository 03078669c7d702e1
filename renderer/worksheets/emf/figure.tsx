import { useMemo } from 'react';
import type { Results } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { Harmonics } from '../../drawing/harmonics';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import { booksInWords, wattsChart } from '../../drawing/watts';
import { workingRange } from '../../drawing/working-range';
import { overlays, type FigureProps } from '../worksheet';

const makers: ((results: Results) => Chart)[] = [waveChart, voltsChart, ampsChart, bookChart];

export function Figure({ design, results, against }: FigureProps) {
  const charts = useMemo(() => makers.map((chartOf) => chartOf(results)), [results]);
  const others = useMemo(() => makers.map((chartOf) => overlays(against, (v) => chartOf(v.results))), [against]);
  const { phases, connection } = design.winding;
  const { orders, phaseEmf } = results.stages.emf;
  const sizes = useMemo(() => orders.map((_, i) => Math.hypot(phaseEmf[0]?.cos[i] ?? 0, phaseEmf[0]?.sin[i] ?? 0)), [orders, phaseEmf]);
  return (
    <Plates of="charts">
      {charts.map((chart, i) => (
        <LineChart key={chart.title} chart={chart} against={others[i]} note={chart.stacked && booksInWords(results.stages.rated)} />
      ))}
      <Harmonics
        title="Harmonics of the phase volts"
        orders={orders}
        sizes={sizes}
        note={`Of the fundamental.${phases === 3 ? THIRDS[connection] : ''}`}
      />
    </Plates>
  );
}

const THIRDS = {
  star: ' Those that three divides cancel between the terminals.',
  delta: ' Those that three divides drive a current round the delta and do not show at the terminals.',
  separate: '',
};

function waveChart({ stages, emf }: Results): Chart {
  const { angle, phase, line } = stages.emf.waveform;
  return {
    title: 'No-load volts, 1000 rpm',
    x: { label: 'Electrical angle', kind: 'angle', values: [...angle, 2 * Math.PI] },
    y: { label: 'Volts', kind: 'voltage' },
    series: [
      { label: 'Phase', values: [...phase, phase[0] ?? null] },
      ...(Math.abs(emf.lineRmsPer1000rpm - emf.phaseRmsPer1000rpm) > 1e-6 * emf.phaseRmsPer1000rpm
        ? [{ label: 'Between terminals', values: [...line, line[0] ?? null] }]
        : []),
    ],
  };
}

/** What all charts over the speed have in common, and the points of the curve they show. */
function overSpeed(results: Results) {
  const { cutIn, rated } = results;
  const curve = workingRange(results);
  const limits = [
    { along: 'x' as const, at: cutIn.rpm, label: 'cut-in' },
    { along: 'x' as const, at: rated.rpm, label: 'rated' },
  ];
  return { curve, frame: { x: { label: 'Speed', kind: 'rpm' as const, values: curve.map((p) => p.rpm), fromZero: true }, limits } };
}

function voltsChart(results: Results): Chart {
  const { curve, frame } = overSpeed(results);
  return {
    ...frame,
    title: 'Volts at the load',
    y: { label: 'DC volts', kind: 'voltage', fromZero: true },
    series: [{ label: 'DC volts', values: curve.map((p) => p.dcVolts) }],
  };
}

function ampsChart(results: Results): Chart {
  const { curve, frame } = overSpeed(results);
  return {
    ...frame,
    title: 'Amps, load and phase',
    y: { label: 'Amps', kind: 'current', fromZero: true },
    series: [
      { label: 'DC', values: curve.map((p) => p.dcAmps) },
      { label: 'One phase, RMS', values: curve.map((p) => p.phaseAmps) },
    ],
  };
}

function bookChart(results: Results): Chart {
  const { curve, frame } = overSpeed(results);
  return wattsChart(curve, frame);
}
