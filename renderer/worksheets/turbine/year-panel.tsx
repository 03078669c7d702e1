import Box from '@mui/material/Box';
import { useEffect, useState } from 'react';
import { yearAdvice, yearVariants, type Design, type YearCurve } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { LineChart } from '../../drawing/line-chart';
import { useCalm } from '../../drawing/pace';
import { Plates } from '../../drawing/plate';
import { Section } from '../../parts/section';
import { useUnits } from '../../parts/unit-preferences';
import { solveAside } from '../../state/results';
import { format, formatDifference, type UnitPreferences } from '../../units';

interface Curves {
  of: Design;
  turns: YearCurve;
  volts: YearCurve;
}

/** The design must have stood still for so long before its variants are solved. [ms] */
const CALM = 800;

/** What other turns and another load voltage would make of the year's energy, each variant solved on a thread aside. */
export function YearPanel({ design }: { design: Design }) {
  const units = useUnits();
  const curves = useYearCurves(useCalm(design, CALM));
  const stale = curves?.of !== design;
  return (
    <Section title="What would lift the year’s energy">
      {!curves ? (
        <Box sx={{ py: 1, fontSize: 13, color: 'text.secondary' }}>Solving the design with other turns and another load voltage…</Box>
      ) : (
        <Box aria-busy={stale} sx={{ pt: 1.25, maxWidth: 1100, opacity: stale ? 0.6 : 1 }}>
          <Plates of="charts">
            <LineChart
              chart={chartOf('Energy over the turns', 'Turns', 'count', curves.turns, curves.of.winding.turns)}
              height={230}
              note={turnsInWords(curves, units)}
            />
            {curves.volts.length > 0 && (
              <LineChart
                chart={chartOf('Energy over the load’s volts', 'Volts', 'voltage', curves.volts, voltsOf(curves.of))}
                height={230}
                note={voltsInWords(curves, units)}
              />
            )}
          </Plates>
        </Box>
      )}
    </Section>
  );
}

function useYearCurves(design: Design): Curves | undefined {
  const [curves, setCurves] = useState<Curves>();
  useEffect(() => {
    let gone = false;
    void curvesOf(design, () => gone).then((found) => {
      if (found && !gone) setCurves(found);
    });
    return () => {
      gone = true;
    };
  }, [design]);
  return curves;
}

/** One after the other, so that it stops soon when the design changes. */
async function curvesOf(design: Design, stopped: () => boolean): Promise<Curves | undefined> {
  const curves: Curves = { of: design, turns: [], volts: [] };
  for (const { of, value, design: variant } of yearVariants(design)) {
    if (stopped()) return undefined;
    const answer = await solveAside(variant);
    if (answer.ok) curves[of].push({ value, energy: answer.results.year.energy });
  }
  return curves;
}

const voltsOf = ({ load }: Design): number => (load.kind === 'battery' ? load.voltage : load.kind === 'threshold' ? load.turnOn : 0);

function chartOf(title: string, label: string, kind: 'count' | 'voltage', curve: YearCurve, own: number): Chart {
  return {
    title,
    x: { label, kind, values: curve.map(({ value }) => value) },
    y: { label: 'Energy', kind: 'energy', fromZero: true },
    series: [{ label: 'Energy', values: curve.map(({ energy }) => energy) }],
    limits: [{ along: 'x', at: own, label: 'this design' }],
  };
}

function turnsInWords({ of, turns }: Curves, units: UnitPreferences): string {
  const advice = yearAdvice(turns, of.winding.turns, 1);
  if (!advice) return '';
  const best = advice.best.value === of.winding.turns ? 'no other does better' : `${advice.best.value} turns bring most`;
  return `One turn more: ${formatDifference(advice.oneMore, 'energy', units)} a year. Of these ${best}, ${format(advice.best.energy, 'energy', units, 3)}.`;
}

function voltsInWords({ of, volts }: Curves, units: UnitPreferences): string {
  const own = voltsOf(of);
  const advice = yearAdvice(volts, own, 0.01 * own);
  if (!advice) return '';
  const best = advice.best.value === own ? 'no other does better' : `${format(advice.best.value, 'voltage', units, 3)} bring most`;
  return `One per cent more volts: ${formatDifference(advice.oneMore, 'energy', units)} a year. Of these ${best}, ${format(advice.best.energy, 'energy', units, 3)}. The winding stays as it is.`;
}
