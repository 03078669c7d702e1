import { useMemo } from 'react';
import { turbineStage, type Design, type Results } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import { booksInWords, wattsChart } from '../../drawing/watts';
import { overlays, type FigureProps } from '../worksheet';

const makers: ((design: Design, results: Results) => Chart)[] = [bookChart, speedChart, ratioChart, wheelChart];

export function Figure({ design, results, against }: FigureProps) {
  const charts = useMemo(() => makers.map((chartOf) => chartOf(design, results)), [design, results]);
  const others = useMemo(() => makers.map((chartOf) => overlays(against, (v) => chartOf(v.design, v.results))), [against]);
  return (
    <Plates of="charts">
      {charts.map((chart, i) => (
        <LineChart
          key={chart.title}
          chart={chart}
          against={others[i]}
          height={250}
          note={chart.stacked && booksInWords(results.stages.rated)}
        />
      ))}
    </Plates>
  );
}

const windAxis = ({ match }: Results) => ({ label: 'Wind', kind: 'windSpeed' as const, values: match.map((p) => p.wind), fromZero: true });

const windLimits = ({ cutIn, rated }: Results) => [
  { along: 'x' as const, at: cutIn.wind, label: 'cut-in' },
  { along: 'x' as const, at: rated.wind, label: 'rated' },
];

function bookChart(_design: Design, results: Results): Chart {
  return wattsChart(results.match, { x: windAxis(results), limits: windLimits(results) });
}

function speedChart(_design: Design, results: Results): Chart {
  return {
    title: 'Speed of the shaft',
    x: windAxis(results),
    y: { label: 'Speed', kind: 'rpm', fromZero: true },
    series: [{ label: 'Speed', values: results.match.map((p) => p.rpm) }, ...otherBalances(results)],
    limits: windLimits(results),
  };
}

/** Speeds that hold as well, for a wheel that was already faster, and those at which it tips over; no series where there is none. */
function otherBalances({ match }: Results) {
  const others = match.map(({ balances, rpm }) => balances.filter((each) => each.rpm > rpm * (1 + 1e-6)));
  return [
    { label: 'Holds as well', values: others.map((each) => each.findLast(({ stable }) => stable)?.rpm ?? null) },
    { label: 'Tips over', values: others.map((each) => each.find(({ stable }) => !stable)?.rpm ?? null) },
  ].filter(({ values }) => values.some((v) => v !== null));
}

function ratioChart({ turbine, site }: Design, results: Results): Chart {
  const { best, runawayRatio } = turbineStage(turbine, site);
  return {
    title: 'Tip-speed ratio under load',
    x: windAxis(results),
    y: { label: 'Tip-speed ratio', kind: 'ratio', fromZero: true },
    series: [{ label: 'Tip-speed ratio', values: results.match.map((p) => p.tipSpeedRatio) }],
    limits: [
      { along: 'y', at: best.tipSpeedRatio, label: 'best for the blades' },
      { along: 'y', at: runawayRatio, label: 'running free', tone: 'bad' },
    ],
  };
}

const POINTS = 80;

function wheelChart({ turbine, site }: Design, { match, rated }: Results): Chart {
  const { wheel, runawayRatio } = turbineStage(turbine, site);
  const ratios = Array.from({ length: POINTS + 1 }, (_, i) => (i / POINTS) * runawayRatio);
  const atRated = match.find((p) => p.wind >= rated.wind);
  return {
    title: 'Power coefficient of the wheel',
    x: { label: 'Tip-speed ratio', kind: 'ratio', values: ratios },
    y: { label: 'Power coefficient', kind: 'ratio', fromZero: true },
    series: [{ label: 'Power coefficient', values: ratios.map((ratio) => wheel.coefficient(ratio)) }],
    limits: [{ along: 'x', at: atRated && atRated.rpm > 0 ? atRated.tipSpeedRatio : null, label: 'at rated wind' }],
  };
}
