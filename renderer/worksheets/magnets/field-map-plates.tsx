import { useEffect, useMemo, useRef, useState } from 'react';
import type { Design, Results } from '../../../core';
import { DrawingPlate } from '../../drawing/drawing-plate';
import { useCalm } from '../../drawing/pace';
import { useUnits } from '../../parts/unit-preferences';
import { format } from '../../units';
import { fieldMapDrawing } from './field-map';
import type { Answer, Question } from './field-map.worker';
import { fluxDrawing } from './flux-drawing';

interface Props {
  design: Design;
  results: Results;
}

/** Beyond copper and magnets by this share of their length. */
const BEYOND = 0.12;
const CALM = 400;

/** The field as flux lines in the section and level lines in the plan, worked out once the numbers stand still. */
export function FieldMapPlates(props: Props) {
  const units = useUnits();
  const { design, results } = useCalm(
    useMemo(() => ({ design: props.design, results: props.results }), [props.design, props.results]),
    CALM,
  );
  const answer = useFieldMap(design, results);
  // Both drawings wait for the lines of the design they show.
  const drawing = useMemo(
    () => answer && { map: fieldMapDrawing(answer.map, design, results), flux: fluxDrawing(answer.flux, design, results) },
    [answer, design, results],
  );
  if (!drawing) return null;
  const { map, flux } = drawing;
  return (
    <>
      <DrawingPlate
        drawing={flux}
        description="Flux lines from magnet to magnet, in the section along the pitch circle"
        height={300}
        note="As much flux between any two neighbours. What runs inside magnets and steel is not drawn."
      />
      <DrawingPlate
        drawing={map}
        description={`Level lines of the field over two poles, peak ${format(results.gap.peak, 'fluxDensity', units)}`}
        height={300}
        note={`Along the axle; a line every ${format(map.step, 'fluxDensity', units, 1)}. Point at one to read it.`}
      />
    </>
  );
}

/** The field of the last design asked for; while another is worked out the one before stays. */
function useFieldMap(design: Design, { stages }: Results): Answer | null {
  const [answer, setAnswer] = useState<Answer | null>(null);
  const worker = useRef<Worker>(null);
  const { innerRadius, outerRadius } = stages.winding;
  useEffect(() => {
    const thread = new Worker(new URL('./field-map.worker.ts', import.meta.url), { type: 'module', name: 'field map' });
    thread.onmessage = (event: MessageEvent<Answer>) => setAnswer(event.data);
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
  return answer?.map.poles === design.discs.poles ? answer : null;
}
