import { useMemo } from 'react';
import { chargeLimits, type ControllerVerdict, type Design, type Results } from '../../../core';
import { Bars, type Bar } from '../../drawing/bars';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Plates } from '../../drawing/plate';
import { useUnits } from '../../parts/unit-preferences';
import { format, type UnitPreferences } from '../../units';
import { overlays, type FigureProps } from '../worksheet';

export function Figure({ design, results, against }: FigureProps) {
  const units = useUnits();
  const chart = useMemo(() => chargeChart(design, results), [design, results]);
  const others = useMemo(() => overlays(against, (v) => chargeChart(v.design, v.results)), [against]);
  return (
    <Plates of="charts">
      {results.controller.length > 0 && (
        <Bars
          title="What comes, against what the controller allows"
          bars={results.controller.map((v) => bar(v, units))}
          note="The upright mark is the controller’s limit; only in light wind must the bar pass it."
        />
      )}
      <LineChart chart={chart} against={others} />
    </Plates>
  );
}

const kinds = { V: 'voltage', A: 'current', W: 'power' } as const;
const tones = { pass: 'good', tight: 'warn', fail: 'bad' } as const;

/** Every limit stands at two thirds of the width, so that the margins compare. */
const LIMIT_AT = 2 / 3;

function bar({ situation, verdict, value, limit, unit }: ControllerVerdict, units: UnitPreferences): Bar {
  const text = (v: number) => format(v, kinds[unit], units, 3);
  return {
    label: situation,
    length: limit > 0 ? (LIMIT_AT * value) / limit : 0,
    mark: LIMIT_AT,
    value: `${text(value)}, limit ${text(limit)}`,
    word: verdict,
    tone: tones[verdict],
  };
}

function chargeChart(design: Design, { match, rated, cutIn }: Results): Chart {
  const { load, controller } = design;
  const battery = load.kind === 'battery' ? chargeLimits(load, 25) : undefined;
  return {
    title: 'Amps into the load',
    x: { label: 'Wind', kind: 'windSpeed', values: match.map((p) => p.wind), fromZero: true },
    y: { label: 'DC amps', kind: 'current', fromZero: true },
    series: [{ label: 'DC amps', values: match.map((p) => p.dcAmps) }],
    limits: [
      { along: 'x', at: cutIn.wind, label: 'cut-in' },
      { along: 'x', at: rated.wind, label: 'rated' },
      { along: 'y', at: controller?.maxInputCurrent ?? null, label: 'controller’s input', tone: 'bad' },
      { along: 'y', at: battery?.greatestAmps ?? null, label: 'most the battery takes', tone: 'bad' },
      { along: 'y', at: battery?.usualAmps ?? null, label: 'usual for the battery' },
    ],
  };
}
