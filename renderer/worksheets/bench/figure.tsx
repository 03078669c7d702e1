import { useMemo } from 'react';
import {
  deviationsOf,
  expectedReadings,
  toneOf,
  turbineStage,
  type BenchReport,
  type Design,
  type Reading,
  type Results,
} from '../../../core';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { Column, Plates } from '../../drawing/plate';
import { useUnits } from '../../parts/unit-preferences';
import { format, type UnitPreferences } from '../../units';
import type { FigureProps } from '../worksheet';
import { DeviationPlot, type Deviation } from './deviation-plot';
import { FieldTests } from './field-tests';
import { figureWords, kindOf, shownMeasured } from './figures';
import { Speeds } from './speeds';
import { useBenchReport } from './use-report';

export function Figure({ design, results }: FigureProps) {
  const units = useUnits();
  const { report } = useBenchReport(design);
  const readings = design.bench ?? [];
  const chart = useMemo(() => expectedChart(design, results), [design, results]);
  const deviations = useMemo(() => (report ? deviationRows(report, design.bench ?? [], units) : []), [report, design, units]);
  const curve = useMemo(() => plannedCurve(design), [design]);
  return (
    <Column>
      <Plates of="drawings">
        {deviations.length > 0 && <DeviationPlot deviations={deviations} />}
        <LineChart chart={chart} note="Turn the shaft by hand or drill, read the speed, and find the volts the meter must show." />
      </Plates>
      {report && <FieldTests report={report} readings={readings} curve={curve} />}
      {report && <Speeds report={report} readings={readings} />}
    </Column>
  );
}

function deviationRows({ compared, fit }: BenchReport, readings: Reading[], units: UnitPreferences): Deviation[] {
  return compared.flatMap((c) => {
    const reading = readings[c.row];
    if (!reading) return []; // taken out since the report was made
    const planned = deviationsOf(c);
    const residual = fit.residuals.find(({ row, figure }) => row === c.row && figure === c.figure);
    return {
      label: figureWords(reading, c.figure),
      planned,
      ...(residual && { fitted: residual.deviations }),
      tone: toneOf(planned),
      told: `${shownMeasured(c, units)}, planned ${format(c.planned, kindOf[c.figure], units, 3)}`,
    };
  });
}

const POINTS = 60;

/** The plan's wheel from standstill to run-away. */
function plannedCurve({ turbine, site }: Design) {
  const { wheel, runawayRatio } = turbineStage(turbine, site);
  const ratio = Array.from({ length: POINTS + 1 }, (_, i) => (runawayRatio * i) / POINTS);
  return { ratio, coefficient: ratio.map(wheel.coefficient) };
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
