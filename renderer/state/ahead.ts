import { readDesign, type Design } from '../../core';
import { goingOn } from './going-on';

/** Steps worked out in advance: more than one, so that a step which takes long does not hold up the next. */
const STEPS = 3;

/**
 * While a number is moved step by step – a held key, a steady drag –, the steps to come are worked out one after another, each at hand when it comes.
 * Who turns elsewhere waits for one of them at most.
 */
export function createAhead<Answer>(solve: (design: Design) => Promise<Answer>) {
  let came: Design[] = [];
  let ready: { design: Design; answer: Answer }[] = [];
  let working = false;
  const course = () => [...came, ...ready.map(({ design }) => design)];
  const work = async () => {
    if (working) return;
    working = true;
    for (;;) {
      const [before, then, now] = course().slice(-3);
      if (!before || !then || !now || ready.length === STEPS) break;
      const after = goingOn(before, then, now);
      if (!after || !readDesign(after).ok) break;
      const answer = await solve(after);
      if (course().at(-1) === now) ready.push({ design: after, answer });
    }
    working = false;
  };
  const isNext = (design: Design) => ready[0] !== undefined && JSON.stringify(ready[0].design) === JSON.stringify(design);
  return {
    /** The answer to a design, if it is there already. */
    answerTo: (design: Design): Answer | undefined => (isNext(design) ? ready[0]?.answer : undefined),
    /** Takes note of the design that came on screen, and looks on from there. */
    follow: (design: Design): void => {
      const met = isNext(design) ? ready.shift() : undefined;
      if (!met) ready = [];
      came = [...came.slice(-2), met?.design ?? design];
      void work();
    },
  };
}
