import { setFlagsFromString } from 'node:v8';
import { runInNewContext } from 'node:vm';
import { describe, expect, test } from 'vitest';
import { solve } from '../../../core/chain/solve';
import { createStageCache } from '../../../core/chain/stage-cache';
import type { Design } from '../../../core/design/schema';
import { createEvaluator, type Found } from '../../../core/explore/evaluate';
import { beats } from '../../../core/explore/front';
import { designOf } from '../../../core/explore/geometry';
import { breaches, marks } from '../../../core/explore/limits';
import { objectives, objectivesFor, objectivesOf, vectorOf } from '../../../core/explore/objectives';
import { createSearch, limitsOf, noStanding, searchAll, takeIn } from '../../../core/explore/search';
import { searchSpace, type Candidate } from '../../../core/explore/space';
import { whyNot } from '../../../core/explore/why-not';
import { createRandom } from '../../../core/numeric/random';
import { demo } from '../../demo';
import { size } from '../../electron/size';

const nameOf = ({ candidate }: Found) => JSON.stringify(candidate);
const sorted = (found: readonly Found[]) => found.map(nameOf).sort();

/** Every machine of a space, nothing ruled out beforehand: each solved on its own, and what cannot stand struck off afterwards by its results. */
function bruteForce(design: Design): Found[] {
  const space = searchSpace(design);
  const limits = limitsOf(design);
  const shelf = design.shelf ?? [];
  const cache = createStageCache();
  const all = space.frames.flatMap((frame) =>
    space.windings(frame).flatMap((winding) => space.turns.map((turns): Candidate => ({ ...frame, ...winding, turns }))),
  );
  const stand = all.flatMap((candidate): Found[] => {
    const made = designOf(design, candidate);
    const results = solve(made, cache);
    const { stages, coils } = results;
    const dangers = [...stages.winding.cautions, ...stages.field.cautions].filter(
      ({ severity, where }) => severity === 'danger' && where !== 'magnets.intrinsicCoercivity',
    );
    if (dangers.length || !coils.fits || coils.wireMass > candidate.reel.mass) return [];
    const values = objectivesOf(results, shelf.every(({ price }) => price !== undefined) ? candidate.reel.price : undefined);
    return breaches(values, limits).length ? [] : [{ candidate, objectives: values }];
  });
  return stand.filter((one) => !stand.some((other) => beats(vectorOf(other.objectives), vectorOf(one.objectives))));
}

describe('on small spaces the search finds exactly what brute force finds', () => {
  test.each<[string, Design]>([
    [
      'reels, hands, turns, gap and phases of a serpentine',
      demo('shed-light', {
        runningClearance: { from: 0.0015, to: 0.002, step: 0.0005 },
        phases: { from: 1, to: 2, step: 1 },
        inHand: { from: 1, to: 2, step: 1 },
        turns: { from: 20, to: 60, step: 10 },
        limits: { temperatureMargin: 0 },
      }),
    ],
    [
      'layouts, poles and coils, some of which do not go',
      demo('shed-light', {
        layouts: ['concentrated', 'stacked'],
        poles: { from: 8, to: 20, step: 6 },
        coils: { from: 6, to: 9, step: 3 },
        parallelPaths: { from: 1, to: 2, step: 1 },
        turns: { from: 20, to: 80, step: 30 },
      }),
    ],
  ])('%s', { timeout: 60_000 }, (_, design) => {
    const { front, considered, solved, pruned } = searchAll(design);
    expect(sorted(front.items)).toEqual(sorted(bruteForce(design)));
    expect(front.items.length).toBeGreaterThan(3);
    expect(solved + pruned.frame + pruned.fit + pruned.reel).toBe(considered);
    expect(pruned.frame + pruned.fit + pruned.reel).toBeGreaterThan(0);
  });
});

const SPACES = size(2, 20);
const SAMPLES = size(30, 10_000);

test(`on ${SPACES} random larger spaces none of ${SAMPLES} random samples beats what the search found`, { timeout: 3_600_000 }, () => {
  let machines = 0;
  for (let seed = 1; seed <= SPACES; seed++) {
    const random = createRandom(seed);
    const whole = (low: number, high: number) => low + Math.floor((high - low + 1) * random.uniform());
    const from = whole(8, 30);
    const design = demo('shed-light', {
      phases: { from: 1, to: whole(1, 3), step: 1 },
      thickness: { from: 0.005, to: 0.005 + 0.001 * whole(0, 1), step: 0.001 },
      inHand: { from: 1, to: whole(1, size(2, 4)), step: 1 },
      turns: { from, to: from + whole(4, size(30, 80)), step: whole(size(2, 1), size(6, 2)) },
      connections: ['star', 'delta'],
      limits: { temperatureMargin: whole(-20, 10) },
    });
    const space = searchSpace(design);
    const evaluate = createEvaluator(space);
    const front = searchAll(design).front.items.map((each) => vectorOf(each.objectives));
    const oneOf = <T>(list: readonly T[]) => list[whole(0, list.length - 1)];
    /** A space has fewer machines than samples are drawn of it: each is worked out once. */
    const looked = new Set<string>();
    for (let k = 0; k < SAMPLES; k++) {
      const frame = oneOf(space.frames);
      const candidate: Candidate = { ...frame, ...oneOf(space.windings(frame)), turns: oneOf(space.turns) };
      const name = JSON.stringify(candidate);
      if (looked.has(name)) continue;
      looked.add(name);
      const { coils } = solve(designOf(design, candidate));
      const found = evaluate(candidate);
      if (!coils.fits || coils.wireMass > candidate.reel.mass || breaches(found.objectives, limitsOf(design)).length) continue;
      const vector = vectorOf(found.objectives);
      expect(front.some((each) => beats(vector, each))).toBe(false);
      expect(front.some((each) => beats(each, vector) || each.every((value, i) => value === vector[i]))).toBe(true);
    }
    machines += looked.size;
  }
  console.log(`${SPACES} spaces, ${SAMPLES} samples of each, ${machines} machines among them: none better than the search's`);
});

/** Turns in steps of one, as many machines as asked for. */
const MACHINES = size(500, 100_000);
const MEBIBYTE = 2 ** 20;

test(`memory stays flat over ${MACHINES} machines`, { timeout: 7_200_000 }, () => {
  const { run, units } = createSearch(demo('shed-light', { turns: { from: 20, to: 44, step: 1 }, inHand: { from: 1, to: 2, step: 1 } }));
  setFlagsFromString('--expose-gc');
  const collect = runInNewContext('gc') as () => void;
  const heaps: number[] = [];
  let standing = noStanding();
  let solved = 0;
  for (let unit = 0, next = MACHINES / 5; solved < MACHINES; unit++) {
    // The space anew and anew: equal machines would stand side by side in one front.
    if (unit % units.length === 0) standing = noStanding();
    const report = run(unit % units.length);
    takeIn(standing, report);
    solved += report.solved;
    if (solved < next) continue;
    next += MACHINES / 5;
    collect();
    heaps.push(process.memoryUsage().heapUsed / MEBIBYTE);
  }
  console.log(`heap after each fifth of ${MACHINES} machines: ${heaps.map((heap) => heap.toFixed(1)).join(', ')} MiB`);
  expect(Math.max(...heaps.slice(1))).toBeLessThan(heaps[0] + 4);
});

test('pieces may come in any order, from any number of threads', () => {
  const design = demo('shed-light', { inHand: { from: 1, to: 2, step: 1 }, turns: { from: 20, to: 44, step: 12 } });
  const [here, there] = [createSearch(design), createSearch(structuredClone(design))];
  const standing = noStanding();
  for (let unit = here.units.length - 1; unit >= 0; unit--) takeIn(standing, structuredClone((unit % 2 ? here : there).run(unit)));
  expect(sorted(standing.front.items)).toEqual(sorted(searchAll(design).front.items));
  expect(standing.considered).toBe(here.size);
});

test('tighter limits afterwards leave what a search with those limits finds', () => {
  const search = { inHand: { from: 1, to: 2, step: 1 }, turns: { from: 20, to: 60, step: 10 } };
  const wide = searchAll(demo('shed-light', search)).front.items;
  const middle = [...wide].sort((a, b) => a.objectives.cost - b.objectives.cost)[Math.floor(wide.length / 2)].objectives.cost;
  const narrow = searchAll(demo('shed-light', { ...search, limits: { cost: middle } })).front.items;
  expect(sorted(wide.filter(({ objectives: { cost } }) => cost <= middle))).toEqual(sorted(narrow));
  expect(narrow.length).toBeLessThan(wide.length);
});

test('wire is weighed by its price only where every reel has one', () => {
  const { shelf: [reel] = [] } = demo('shed-light');
  const weighed = (...prices: (number | undefined)[]) => objectivesFor(prices.map((price) => ({ ...reel, price }))).at(-1);
  expect(weighed(16, 17)).toMatchObject({ id: 'cost', label: 'Price of wire', unit: 'price' });
  for (const prices of [[16, undefined], []]) expect(weighed(...prices)).toMatchObject({ id: 'cost', label: 'Wire', unit: 'mass' });
});

test('marks follow the weights', () => {
  const values = (cutInWind: number, yearEnergy: number) => ({ cutInWind, yearEnergy, temperatureMargin: 1, controllerMargin: 1, cost: 1 });
  const all = [values(2, 10), values(4, 20), values(Infinity, 15)];
  const only = (id: string) => Object.fromEntries(objectives.map((each) => [each.id, each.id === id ? 1 : 0]));
  expect(marks(all, only('cutInWind'))).toEqual([1, 0, 0]);
  expect(marks(all, only('yearEnergy'))).toEqual([0, 1, 0.5]);
  expect(marks(all, only(''))).toEqual([0, 0, 0]);
});

describe('why not', () => {
  const design = demo('shed-light', { turns: { from: 20, to: 44, step: 12 }, limits: { temperatureMargin: 0 } });
  const { front } = searchAll(design);
  const wish = (change: Partial<Design['winding']>): Design => ({ ...design, winding: { ...design.winding, ...change } });
  const ask = (wished: Design) => whyNot(wished, limitsOf(wished), front.items);

  test('nothing stands against a machine that was found', () => {
    const answer = ask(designOf(design, front.items[0].candidate));
    expect(answer).toMatchObject({ faults: [], breaches: [], beatenBy: [] });
  });

  test('turns that do not go in, wire that is not there, a reel too short', () => {
    expect(ask(wish({ turns: 90 })).faults.map(({ where }) => where)).toContain('winding.turns');
    const { wire } = design.winding;
    const [fault] = ask(wish({ wire: { ...wire, conductorDiameter: 0.001, overallDiameter: 0.0011 } })).faults;
    expect(fault.message).toBe('No reel on the shelf holds this wire.');
    const [short] = ask({ ...design, shelf: design.shelf?.map((reel) => ({ ...reel, mass: 0.1 })) }).faults;
    expect(short.message).toMatch(/kg too light: \d+ m are missing/);
  });

  test('a limit broken, with value and limit', () => {
    const hot = { ...design, surroundings: { ...design.surroundings, formerLimit: 25 } };
    const [breach] = ask(hot).breaches;
    expect(breach.objective.id).toBe('temperatureMargin');
    expect(breach.value).toBeLessThan(0);
  });

  test('wire that no reel holds has a price nobody knows: it breaks no limit on it, and none is better by it', () => {
    const { wire } = design.winding;
    const shelf = design.shelf?.map((reel) => ({ ...reel, price: 16 }));
    const wished = { ...wish({ wire: { ...wire, conductorDiameter: 0.001, overallDiameter: 0.0011 } }), shelf };
    const { objectives: own } = ask(wished);
    const cheap = { candidate: front.items[0].candidate, objectives: { ...own, cost: 1e-6 } };
    expect(whyNot(wished, { cost: 1e-6 }, [cheap])).toMatchObject({ breaches: [], beatenBy: [] });
    expect(whyNot({ ...design, shelf }, { cost: 1e-6 }, []).breaches.map(({ objective }) => objective.id)).toEqual(['cost']);
  });

  test('too few magnets', () => {
    const answer = ask({ ...design, search: { ...design.search, magnetsInHand: 20 } });
    expect(answer.faults[0]).toEqual({ where: 'discs.poles', message: 'Needs 28 magnets; 20 are in hand.' });
  });

  test('a machine that another beats, and by which', () => {
    const { objectives: own } = ask(design);
    const better = { candidate: front.items[0].candidate, objectives: { ...own, cost: own.cost / 2 } };
    const elsewhere = { ...better, objectives: { ...own, cost: own.cost / 2, yearEnergy: own.yearEnergy / 2 } };
    expect(whyNot(design, {}, [elsewhere, better]).beatenBy).toEqual([better]);
  });
});
