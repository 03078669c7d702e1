import { spawn } from 'node:child_process';
import { existsSync, mkdtempSync, readdirSync, readFileSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { backupOf } from '../../electron/whole-file';
import { bundledSaver } from './saver-process';
import { seeded, size } from './size';

const kills = size(25, 1000);
const saver = bundledSaver();
const folder = mkdtempSync(path.join(tmpdir(), 'gapwright-killed-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

/** Saves on and on from `first` until it is killed; gives the number of the last save that it knew to be on the disk. */
function killedWhileSaving(script: string, file: string, first: number, milliseconds: number): Promise<number> {
  const child = spawn(process.execPath, [script, 'loop', file, String(first)], { stdio: ['ignore', 'pipe', 'inherit'] });
  let told = '';
  child.stdout.on('data', (chunk: Buffer) => {
    // Counted from the first save on, so that no kill is spent on the start of the process.
    if (told === '') setTimeout(() => child.kill('SIGKILL'), milliseconds);
    told += chunk.toString();
  });
  return new Promise((resolve) => child.on('close', () => resolve(Number(told.trimEnd().split('\n').at(-1)))));
}

/** The number of a whole design; throws when the text is not whole. */
function numberIn(file: string): number {
  const { n, end } = JSON.parse(readFileSync(file, 'utf8')) as { n: number; end: number };
  if (n !== end) throw new Error(`${file} is made of two designs`);
  return n;
}

test(
  `killed ${kills} times while it saves, the file is always whole: the last design saved or the one on its way`,
  { timeout: 3_600_000 },
  async () => {
    const random = seeded(9);
    const file = path.join(folder, 'plan.gapwright');
    const counts = { old: 0, new: 0, saves: 0, halfWritten: 0 };
    let next = 0;
    for (let kill = 0; kill < kills; kill++) {
      const last = await killedWhileSaving(saver.script, file, next, random() * 25);
      const found = numberIn(file);
      expect([last, last + 1]).toContain(found);
      if (existsSync(backupOf(file))) expect(numberIn(backupOf(file))).toBeLessThanOrEqual(found);
      counts[found === last ? 'old' : 'new']++;
      counts.saves += found - next + 1;
      counts.halfWritten = readdirSync(folder).filter((name) => name.startsWith('.gapwright-')).length;
      next = found + 1;
    }
    console.log(
      `${kills} kills in ${counts.saves} saves: ${counts.old} left the design last saved, ${counts.new} the one on its way, none anything else; ` +
        `${counts.halfWritten} half-written files beside it, taken away by a later save`,
    );
    expect(counts.old + counts.new).toBe(kills);
    expect(
      readdirSync(folder)
        .filter((name) => !name.startsWith('.'))
        .sort(),
    ).toEqual(['plan.backup.gapwright', 'plan.gapwright']);
  },
);
