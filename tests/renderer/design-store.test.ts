import { beforeEach, describe, expect, test } from 'vitest';
import { blankDesign, readDesign } from '../../core';
import * as store from '../../renderer/state/design';
import { stepName } from '../../renderer/worksheets/step-name';

const state = () => store.designStore.getState();
const past = () => state().history.past.map((step) => step.name);

beforeEach(() => store.loadDesign(blankDesign(), null));

describe('the design on screen', () => {
  test('an edit is a named step and undo takes it back to the very same design', () => {
    const before = state().design;
    store.editEntry('winding.turns', 64, stepName, true);
    expect(past()).toEqual([`turns ${before.winding.turns} → 64`]);
    expect(store.isUnsaved(state())).toBe(true);
    store.undo();
    expect(state().design).toBe(before);
    expect(store.isUnsaved(state())).toBe(false);
    store.redo();
    expect(state().design.winding.turns).toBe(64);
  });

  test('an edit shares what it does not touch and leaves the old design as it was', () => {
    const before = state().design;
    store.editEntry('magnets.shape.axial', 0.012, stepName);
    expect(state().design.discs).toBe(before.discs);
    expect(before.magnets.shape.axial).toBe(0.01);
    expect(past()).toEqual(['thickness 10 mm → 12 mm']);
  });

  test('an optional entry left empty is taken out', () => {
    store.editEntry('magnets.intrinsicCoercivity', undefined, stepName);
    expect('intrinsicCoercivity' in state().design.magnets).toBe(false);
    expect(readDesign(state().design).ok).toBe(true);
  });

  test('another kind keeps what the two kinds have in common and is still a design', () => {
    store.editEntry('magnets.shape.axial', 0.015, stepName);
    store.changeKind('magnets.shape', 'cylinder', stepName);
    expect(state().design.magnets.shape).toEqual({ kind: 'cylinder', diameter: 0.03, axial: 0.015 });
    store.changeKind('winding.layout', 'serpentine', stepName);
    store.changeKind('discs.backing', 'none', stepName);
    for (const kind of ['resistor', 'threshold', 'open', 'tracker', 'battery']) {
      store.changeKind('load', kind, stepName);
      expect(state().design.load.kind).toBe(kind);
      expect(readDesign(state().design)).toMatchObject(kind === 'battery' ? {} : { ok: true });
    }
    expect(past()[1]).toBe('magnet shape Block → Round');
  });

  test('a maximum-power load brings its controller', () => {
    store.changeKind('load', 'tracker', stepName);
    expect(state().design.controller).toBeDefined();
  });

  test('several entries of a preset are one step', () => {
    store.editEntries({ 'winding.wire.conductorDiameter': 1e-3, 'winding.wire.overallDiameter': 1.06e-3 }, '1.0 mm');
    expect(past()).toEqual(['1.0 mm']);
    store.undo();
    expect(state().history.past).toEqual([]);
  });

  test('saving and typing back both make it saved again', () => {
    store.editEntry('winding.turns', 70, stepName);
    store.markSaved(state().design, { token: 't', name: 'a.gapwright' });
    expect(store.isUnsaved(state())).toBe(false);
    store.undo();
    expect(store.isUnsaved(state())).toBe(true);
  });

  test('a recovered design is unsaved until it is saved', () => {
    store.recoverDesign(blankDesign());
    expect(store.isUnsaved(state())).toBe(true);
  });

  test('a fault is kept by path and goes with undo, another kind, another design', () => {
    store.setFault('magnets.shape.axial', 'Must be more.');
    expect(state().faults).toEqual({ 'magnets.shape.axial': 'Must be more.' });
    store.changeKind('magnets.shape', 'cylinder', stepName);
    expect(state().faults).toEqual({});
    store.setFault('winding.turns', 'no');
    const { design } = state();
    store.undo();
    expect(state().faults).toEqual({});
    expect(state().design).toBe(design);
  });
});

test('two boxes of a list filled in before the screen has caught up both count', () => {
  store.loadDesign({ ...blankDesign(), bench: [{ label: '', on: 'coil', number: 1 }] }, null);
  type Line = { speed?: number; volts?: number };
  const name = () => 'bench readings';
  store.editList<Line>('bench', (list) => list.map((line) => ({ ...line, speed: 15 })), name);
  store.editList<Line>('bench', (list) => list.map((line) => ({ ...line, volts: 2 })), name);
  expect(state().design.bench).toEqual([{ label: '', on: 'coil', number: 1, speed: 15, volts: 2 }]);
});
