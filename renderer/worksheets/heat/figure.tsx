import { useMemo } from 'react';
import type { Results } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import type { FigureProps } from '../worksheet';

export function Figure({ results }: FigureProps) {
  const temperature = useMemo(() => temperatureChart(results), [results]);
  const losses = useMemo(() => lossChart(results), [results]);
  return (
    <Plates of="charts">
      <LineChart chart={temperature} height={300} />
      <LineChart chart={losses} height={300} />
    </Plates>
  );
}

function temperatureChart({ curve, rated }: Results): Chart {
  return {
    title: 'Coil temperature, settled',
    x: { label: 'Speed', kind: 'rpm', values: curve.map((p) => p.rpm) },
    y: { label: 'Coil temperature', kind: 'temperature' },
    series: [{ label: 'Coil temperature', values: curve.map((p) => p.coilTemperature) }],
    limits: [
      { along: 'y', at: rated.limitTemperature, label: 'limit', tone: 'bad' },
      { along: 'x', at: rated.rpm, label: 'rated' },
    ],
  };
}

function lossChart({ curve, rated }: Results): Chart {
  return {
    title: 'Where the lost watts go',
    x: { label: 'Speed', kind: 'rpm', values: curve.map((p) => p.rpm) },
    y: { label: 'Loss', kind: 'power' },
    stacked: true,
    series: [
      { label: 'Copper', values: curve.map((p) => p.copperLoss) },
      { label: 'Eddy currents', values: curve.map((p) => p.eddyLoss) },
      { label: 'Diodes', values: curve.map((p) => p.diodeLoss) },
      { label: 'Cable', values: curve.map((p) => p.cableLoss) },
      { label: 'Bearings', values: curve.map((p) => p.bearingLoss) },
    ],
    limits: [{ along: 'x', at: rated.rpm, label: 'rated' }],
  };
}
