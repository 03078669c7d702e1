import { expect, test } from 'vitest';
import { designStore } from '../../renderer/state/design';
import { resultsStore } from '../../renderer/state/results';
import { settingsFrom, settingsOf } from '../../renderer/state/settings';
import { viewStore } from '../../renderer/state/view';
import { whereKept } from '../../renderer/state/where-kept';

test('every key of every store says where it is kept', () => {
  const keys = [designStore, viewStore, resultsStore].flatMap((store) => Object.keys(store.getState()));
  expect(keys.sort()).toEqual(Object.keys(whereKept).sort());
});

test('settings hold what is the user’s and nothing of the design', () => {
  expect(Object.keys(settingsOf(viewStore.getState())).sort()).toEqual([
    'length',
    'ownPresets',
    'paper',
    'recent',
    'temperature',
    'theme',
    'wire',
    'worksheet',
  ]);
});

test('settings read back as written; what is unknown or out of place is left out', () => {
  const view = { ...viewStore.getState(), length: 'in' as const, theme: 'dark' as const };
  expect(settingsFrom(JSON.stringify(settingsOf(view)), ['magnets'])).toEqual(settingsOf(view));
  expect(settingsFrom('{"length":"ell","theme":3,"worksheet":"gone","message":"x","dialog":"y"}', ['magnets'])).toEqual({});
  const kept = { table: 'wire', name: 'from the shed', changes: { 'winding.wire.conductorDiameter': 0.0013 } };
  const text = JSON.stringify({ ownPresets: [kept, 7, { ...kept, table: 'rope' }, { table: 'wire', name: 'without numbers' }] });
  expect(settingsFrom(text, [])).toEqual({ ownPresets: [kept] });
  const recent = { name: 'a.gapwright', title: 'A', text: '{}' };
  expect(settingsFrom(JSON.stringify({ recent: [recent, { name: 'b' }, null] }), [])).toEqual({ recent: [recent] });
  for (const text of [null, '', 'no JSON', '[]', '7', 'null']) expect(settingsFrom(text, [])).toEqual({});
});
