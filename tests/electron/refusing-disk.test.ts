import { type ChildProcess, spawn, spawnSync } from 'node:child_process';
import { chmodSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import readline from 'node:readline';
import { afterEach, beforeEach, describe, expect, test } from 'vitest';
import { bundledSaver } from './saver-process';

/**
 * The window host's own opening and saving, in a process of its own, on disks that really refuse. A small disk is mounted where only that process
 * sees it (Linux, unshare); where that is not allowed, a limit on the length of files stands in for the full disk, and a folder without leave to
 * write for the read-only one: other codes of the system, the same way through the program.
 */
const saver = bundledSaver();
const canMount = spawnSync('unshare', ['-rm', 'mount', '-t', 'tmpfs', 'tmpfs', tmpdir()]).status === 0;
/** Permissions do not hold for root, so a process started by root becomes nobody. */
const asNobody = process.getuid?.() === 0 ? { uid: 65534, gid: 65534 } : {};

let folder: string;
let child: ChildProcess | undefined;
beforeEach(() => {
  folder = mkdtempSync(path.join(tmpdir(), 'gapwright-disk-'));
  chmodSync(folder, 0o777);
});
afterEach(() => {
  child?.kill('SIGKILL');
  rmSync(folder, { recursive: true, force: true });
});

const design = () => path.join(folder, 'plan.gapwright');

/** Opens the design in a saver; then each call saves so many bytes and gives what the user is told. */
async function opened(command: string[], options: { uid?: number; gid?: number } = {}) {
  const [program = '', ...args] = command;
  child = spawn(program, [...args, process.execPath, saver.script, 'serve', design()], { stdio: ['pipe', 'pipe', 'inherit'], ...options });
  const lines = readline.createInterface({ input: child.stdout! })[Symbol.asyncIterator]();
  const heard = async () => ((await lines.next()).value as string | undefined) ?? 'the process ended';
  expect(await heard()).toBe('open');
  return (bytes: number) => {
    child!.stdin!.write(`${bytes}\n`);
    return heard();
  };
}

/** A shell that prepares its own view of the disk, then becomes the saver. */
const inOwnDisk = (preparation: string) => ['unshare', '-rm', 'sh', '-c', `${preparation}; exec "$@"`, 'sh'];
const inLimits = (preparation: string) => ['sh', '-c', `${preparation}; exec "$@"`, 'sh'];

describe.runIf(process.platform === 'linux')('a disk', () => {
  test.runIf(canMount)('that is full refuses the save and keeps the old file; with room again the same work is saved', async () => {
    const disk = `mount -t tmpfs -o size=200k tmpfs "${folder}" && printf old > "${design()}"`;
    const save = await opened(inOwnDisk(disk));
    expect(await save(60_000)).toBe('saved');
    expect(await save(500_000)).toBe('Could not write plan.gapwright: the disk is full (ENOSPC). What was there before is unchanged.');
    const seen = (name: string) => spawnSync('cat', [`/proc/${child!.pid}/root${folder}/${name}`]).stdout.length;
    expect([seen('plan.gapwright'), seen('plan.backup.gapwright')]).toEqual([60_000, 3]);
    expect(await save(70_000)).toBe('saved');
    expect([seen('plan.gapwright'), seen('plan.backup.gapwright')]).toEqual([70_000, 60_000]);
  });

  test('that allows no file so long refuses in the midst of writing, and keeps the old file', async () => {
    writeFileSync(design(), 'old');
    const save = await opened(inLimits('trap "" XFSZ; ulimit -f 100'));
    expect(await save(500_000)).toBe(
      'Could not write plan.gapwright: the system does not allow a file this large (EFBIG). What was there before is unchanged.',
    );
    expect(readFileSync(design(), 'utf8')).toBe('old');
    expect(await save(5000)).toBe('saved');
    expect(readFileSync(design(), 'utf8')).toHaveLength(5000);
  });

  test.runIf(canMount)('that is read-only opens the design and refuses to save it', async () => {
    const disk = `mount -t tmpfs tmpfs "${folder}" && printf old > "${design()}" && mount -o remount,ro "${folder}"`;
    const save = await opened(inOwnDisk(disk));
    expect(await save(10)).toBe('Could not write plan.gapwright: the disk is read-only (EROFS). What was there before is unchanged.');
  });
});

describe.skipIf(process.platform === 'win32')('a folder', () => {
  test('in which the user may not write refuses the save; with leave again the same work is saved', async () => {
    writeFileSync(design(), 'old');
    chmodSync(design(), 0o666);
    chmodSync(folder, 0o555);
    const save = await opened(['env'], asNobody);
    const refused =
      'Could not write plan.gapwright: the system refuses access to this file or folder (EACCES). What was there before is unchanged.';
    expect(await save(10)).toBe(refused);
    expect(readFileSync(design(), 'utf8')).toBe('old');
    chmodSync(folder, 0o777);
    expect(await save(10)).toBe('saved');
    expect(readFileSync(design(), 'utf8')).toBe('x'.repeat(10));
  });

  test('holding a design that is marked read-only is not a way round the mark', async () => {
    writeFileSync(design(), 'old');
    chmodSync(design(), 0o444);
    const save = await opened(['env'], asNobody);
    expect(await save(10)).toMatch(/refuses access to this file or folder \(EACCES\)/);
    expect(readFileSync(design(), 'utf8')).toBe('old');
  });

  test('that was removed or moved refuses the save; put back, it takes it', async () => {
    const inner = path.join(folder, 'bench');
    mkdirSync(inner);
    writeFileSync(path.join(inner, 'plan.gapwright'), 'old');
    const outer = folder;
    folder = inner;
    const save = await opened(['env']);
    renameSync(inner, `${inner}-away`);
    expect(await save(10)).toBe(
      'Could not write plan.gapwright: there is no such file or folder (ENOENT). What was there before is unchanged.',
    );
    renameSync(`${inner}-away`, inner);
    expect(await save(10)).toBe('saved');
    folder = outer;
  });
});
