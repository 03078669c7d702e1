import { useEffect, useMemo, useRef, useState } from 'react';
import type { Design, Results } from '../../../core';
import { DrawingPlate } from '../../drawing/drawing-plate';
import { useCalm } from '../../drawing/pace';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';
import { fieldMapDrawing, type FieldMap } from './field-map';
import type { Question } from './field-map.worker';

interface Props {
  design: Design;
  results: Results;
}

/** Beyond copper and magnets by this share of their length. */
const BEYOND = 0.12;
const CALM = 400;

/** The field over two poles as level lines, worked out aside once the numbers stand still. */
export function FieldMapPlate(props: Props) {
  const units = useUnits();
  const { design, results } = useCalm(
    useMemo(() => ({ design: props.design, results: props.results }), [props.design, props.results]),
    CALM,
  );
  const map = useFieldMap(design, results);
  const drawing = useMemo(() => map && { of: map, drawn: fieldMapDrawing(map, design, results) }, [map, design, results]);
  if (!drawing) return null;
  const { drawn } = drawing;
  return (
    <DrawingPlate
      drawing={drawn}
      description={`Level lines of the field over two poles, peak ${format(results.gap.peak, 'fluxDensity', units)}`}
      height={300}
      note={`Along the axle; a line every ${format(drawn.step, 'fluxDensity', units, 1)}. Point at one to read it.`}
    />
  );
}

/** The map of the last design asked for; while another is worked out the one before stays. */
function useFieldMap(design: Design, { stages }: Results): FieldMap | null {
  const [map, setMap] = useState<FieldMap | null>(null);
  const worker = useRef<Worker>(null);
  const { innerRadius, outerRadius } = stages.winding;
  useEffect(() => {
    const thread = new Worker(new URL('./field-map.worker.ts', import.meta.url), { type: 'module', name: 'field map' });
    thread.onmessage = (event: MessageEvent<FieldMap>) => setMap(event.data);
    worker.current = thread;
    return () => thread.terminate();
  }, []);
  useEffect(() => {
    const beyond = BEYOND * (outerRadius - innerRadius);
    worker.current?.postMessage({
      design,
      innerRadius: Math.max(innerRadius - beyond, 1e-3),
      outerRadius: outerRadius + beyond,
    } satisfies Question);
  }, [design, innerRadius, outerRadius]);
  return map?.poles === design.discs.poles ? map : null;
}
