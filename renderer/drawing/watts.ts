import type { CurvePoint } from '../../core';
import type { Chart } from './chart';

/** Where the shaft's power goes, in the order in which it goes: each stack ends at the shaft's power. */
const parts = [
  { label: 'Copper', key: 'copperLoss' },
  { label: 'Eddy currents', key: 'eddyLoss' },
  { label: 'Diodes', key: 'diodeLoss' },
  { label: 'Cable', key: 'cableLoss' },
  { label: 'Bearings', key: 'bearingLoss' },
  { label: 'Load', key: 'dcWatts' },
] as const;

type Points = readonly CurvePoint[];
const series = (points: Points, shown: readonly (typeof parts)[number][]) =>
  shown.map(({ label, key }) => ({ label, values: points.map((p) => p[key]) }));

/** All of it, over the speed or the wind. */
export function wattsChart(points: Points, along: Pick<Chart, 'x' | 'limits'>): Chart {
  return {
    ...along,
    title: 'Where the watts go',
    y: { label: 'Watts', kind: 'power' },
    stacked: true,
    whole: 'Shaft',
    series: series(points, parts),
  };
}

/** What does not reach the load. */
export function lossChart(points: Points, along: Pick<Chart, 'x' | 'limits'>): Chart {
  return {
    ...along,
    title: 'Where the lost watts go',
    y: { label: 'Loss', kind: 'power' },
    stacked: true,
    whole: 'All losses',
    series: series(points, parts.slice(0, -1)),
  };
}

/** A point's books in a sentence: shares of the shaft's power that go to the load and to each loss, greatest first. */
export function booksInWords(point: CurvePoint): string {
  if (!(point.shaftWatts > 0)) return '';
  const share = (watts: number) => `${((100 * watts) / point.shaftWatts).toFixed(0)} %`;
  const losses = parts
    .slice(0, -1)
    .map(({ label, key }) => ({ label, watts: point[key] }))
    .filter(({ watts }) => watts >= 0.005 * point.shaftWatts)
    .sort((a, b) => b.watts - a.watts);
  const lost = losses.map(({ label, watts }) => `${label.toLowerCase()} ${share(watts)}`).join(', ');
  return `At rated wind ${share(point.dcWatts)} of the shaft’s power reaches the load${lost && `; ${lost}`}.`;
}
