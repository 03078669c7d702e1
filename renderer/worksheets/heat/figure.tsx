import { useMemo } from 'react';
import type { CurvePoint, Rated } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import { lossChart } from '../../drawing/watts';
import { workingRange } from '../../drawing/working-range';
import { overlays, type FigureProps } from '../worksheet';

export function Figure({ results, against }: FigureProps) {
  const curve = useMemo(() => workingRange(results), [results]);
  const temperature = useMemo(() => temperatureChart(curve, results.rated), [curve, results.rated]);
  const others = useMemo(
    () => [temperatureChart, lostChart].map((chartOf) => overlays(against, (v) => chartOf(workingRange(v.results), v.results.rated))),
    [against],
  );
  const losses = useMemo(() => lostChart(curve, results.rated), [curve, results.rated]);
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

function lostChart(curve: CurvePoint[], rated: Rated): Chart {
  return lossChart(curve, {
    x: { label: 'Speed', kind: 'rpm', values: curve.map((p) => p.rpm), fromZero: true },
    limits: [{ along: 'x', at: rated.rpm, label: 'rated' }],
  });
}
