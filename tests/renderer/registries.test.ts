import { readdirSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { blankDesign, entryAt, entryQuantities, kindDefaults, type Design } from '../../core';
import { actions } from '../../renderer/actions/registry';
import { withValueAt } from '../../renderer/path';
import { quantityAt } from '../../renderer/words';
import { worksheetFor, worksheets } from '../../renderer/worksheets/registry';

const listed = worksheets.flatMap((w) => w.groups.flatMap((g) => g.entries));

/** Designs that between them have every kind of every union. */
const designs: Design[] = [
  ['magnets.shape', ['block', 'cylinder', 'sector']],
  ['winding.layout', ['serpentine', 'concentrated']],
  ['discs.backing', ['none', 'steel']],
  ['load', ['battery', 'resistor', 'threshold', 'tracker', 'open']],
].flatMap(([path, kinds]) =>
  (kinds as string[]).map((kind) => withValueAt(blankDesign(), path as string, kindDefaults(path as string, kind))),
);

describe('worksheets', () => {
  test('every folder of a worksheet is registered, once, and has its figure', () => {
    const folder = new URL('../../renderer/worksheets/', import.meta.url);
    const folders = readdirSync(folder, { withFileTypes: true }).filter((e) => e.isDirectory());
    expect(folders.map((f) => f.name).sort()).toEqual(worksheets.map((w) => w.id).sort());
    for (const worksheet of worksheets) expect(typeof worksheet.Figure).toBe('function');
  });

  test('there is a worksheet for every entry of the design file but its title, notes, grade and curve', () => {
    const apart = ['title', 'notes', 'magnets.grade', 'turbine.curve'];
    expect(Object.keys(entryQuantities).filter((path) => !listed.includes(path) && !apart.includes(path))).toEqual([]);
  });

  test('every entry a worksheet lists is one of the design file', () => {
    for (const path of listed)
      expect([path, designs.some((d) => entryAt(path, d)) || /^(controller|workshop)\./.test(path)]).toEqual([path, true]);
  });

  test('every entry and result that is listed has its words', () => {
    for (const path of [...listed, ...worksheets.flatMap((w) => w.results)]) expect(quantityAt(path).meaning).not.toBe('');
  });

  test('a caution about any entry has a worksheet to stand on', () => {
    for (const path of Object.keys(entryQuantities)) expect([path, worksheetFor(path)?.id]).toEqual([path, expect.any(String)]);
    expect(worksheetFor('winding.wire.inHand')?.id).toBe('wire');
    expect(worksheetFor('winding.layout.legWidth')?.id).toBe('winding');
  });
});

describe('actions', () => {
  test('ids and shortcuts are unique', () => {
    const ids = actions.map((a) => a.id);
    const shortcuts = actions.flatMap((a) => a.shortcut ?? []);
    expect(new Set(ids).size).toBe(ids.length);
    expect(new Set(shortcuts).size).toBe(shortcuts.length);
  });

  test('every action has a label and an answer to whether it can be performed', () => {
    for (const action of actions) {
      expect(action.label().length).toBeGreaterThan(2);
      expect(typeof action.enabled()).toBe('boolean');
    }
  });

  test('every file that holds an action is in the registry', () => {
    const files = readdirSync(new URL('../../renderer/actions/', import.meta.url)).map((name) => name.replace('.ts', ''));
    const machinery = ['action', 'attempt', 'file-name', 'keys', 'menu', 'open-again', 'open-text', 'registry', 'unless-unsaved'];
    const ids = actions.map((a) => a.id);
    const held: Record<string, string> = {
      print: 'print-sheet',
      export: 'export-coil-table',
      'new-design': 'new',
      units: 'length-unit',
      'go-to-worksheet': 'go-magnets',
    };
    for (const file of files.filter((name) => !machinery.includes(name))) expect(ids).toContain(held[file] ?? file);
  });
});
