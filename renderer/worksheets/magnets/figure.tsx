import { useMemo } from 'react';
import { planDrawing, sectionDrawing, type Results } from '../../../core';
import type { Chart } from '../../drawing/chart';
import { DrawingPlate } from '../../drawing/drawing-plate';
import { Harmonics } from '../../drawing/harmonics';
import { LineChart } from '../../drawing/line-chart';
import { Column, Plates } from '../../drawing/plate';
import { useUnits } from '../../parts/unit-preferences';
import { bareLength, format } from '../../units';
import { FieldMapPlates } from './field-map-plates';
import { dragging, gapHandles, pitchHandles } from '../handles';
import { overlays, type FigureProps } from '../worksheet';

export function Figure({ design, results, against }: FigureProps) {
  const units = useUnits();
  const plan = useMemo(() => planDrawing(design, results, bareLength(units)), [design, results, units]);
  const section = useMemo(() => sectionDrawing(design, results, bareLength(units)), [design, results, units]);
  const profile = useMemo(() => profileChart(results), [results]);
  const others = useMemo(() => overlays(against, (v) => profileChart(v.results)), [against]);
  const { harmonics } = results.stages.field.profile;
  return (
    <Plates of="drawings">
      <Column>
        <DrawingPlate
          drawing={section}
          description={`The machine cut along the pitch circle and laid flat; gap ${format(results.gap.length, 'length', units)}`}
          height={300}
          inUserUnit
          handles={gapHandles(design, results)}
          {...dragging}
        />
        <LineChart chart={profile} against={others} />
        <FieldMapPlates design={design} results={results} />
      </Column>
      <Column>
        <DrawingPlate
          drawing={plan}
          description={`${design.discs.poles} magnets and ${results.coils.count} coils seen along the axle`}
          inUserUnit
          handles={pitchHandles(design)}
          {...dragging}
        />
        <Harmonics
          title="Harmonics of the field"
          orders={harmonics.map((_, h) => 2 * h + 1)}
          sizes={harmonics}
          note="Of the fundamental, at pitch radius in the middle of the copper."
        />
      </Column>
    </Plates>
  );
}

function profileChart({ stages, gap }: Results): Chart {
  const angle = [...stages.field.profile.angle, 2 * Math.PI];
  const bz = stages.field.profile.bz;
  return {
    title: 'Field round one pole pair, pitch radius',
    x: { label: 'Electrical angle', kind: 'angle', values: angle },
    y: { label: 'Flux density along the axle', kind: 'fluxDensity' },
    series: [
      { label: 'Field', values: [...bz, bz[0] ?? null] },
      { label: 'Its fundamental', values: angle.map((a) => gap.fundamental * Math.cos(a)) },
    ],
  };
}
