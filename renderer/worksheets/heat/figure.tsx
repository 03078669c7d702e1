import { useMemo } from 'react';
import type { CurvePoint, Rated } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import { workingRange } from '../../drawing/working-range';
import { overlays, type FigureProps } from '../worksheet';

export function Figure({ results, against }: FigureProps) {
  const curve = useMemo(() => workingRange(results), [results]);
  const temperature = useMemo(() => temperatureChart(curve, results.rated), [curve, results.rated]);
  const others = useMemo(
    () => [temperatureChart, lossChart].map((chartOf) => overlays(against, (v) => chartOf(workingRange(v.results), v.results.rated))),
    [against],
  );
  const losses = useMemo(() => lossChart(curve, results.rated), [curve, results.rated]);
  return (
    <Plates of="charts">
      <LineChart chart={temperature} against={others[0]} height={300} />
      <LineChart chart={losses} against={others[1]} height={300} />
    </Plates>
  );
}

function temperatureChart(curve: CurvePoint[], rated: Rated): Chart {
  return {
    title: 'Coil temperature, settled',
    x: { label: 'Speed', kind: 'rpm', values: curve.map((p) => p.rpm), fromZero: true },
    y: { label: 'Coil temperature', kind: 'temperature' },
    series: [{ label: 'Coil temperature', values: curve.map((p) => p.coilTemperature) }],
    limits: [
      { along: 'y', at: rated.limitTemperature, label: 'limit', tone: 'bad' },
      { along: 'x', at: rated.rpm, label: 'rated' },
    ],
  };
}

function lossChart(curve: CurvePoint[], rated: Rated): Chart {
  return {
    title: 'Where the lost watts go',
    x: { label: 'Speed', kind: 'rpm', values: curve.map((p) => p.rpm), fromZero: true },
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
