import { spawn } from 'node:child_process';
import { chmodSync, cpSync, existsSync, mkdirSync, mkdtempSync, readFileSync, realpathSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';

/** Each test starts processes of its own, on a machine that may be busy. */
vi.setConfig({ testTimeout: 60_000 });

let project: string;

/** The built program and its start script in a folder of their own, with a stand-in for the Electron runtime. */
beforeEach(() => {
  project = realpathSync(mkdtempSync(path.join(tmpdir(), 'gapwright-project-')));
  for (const part of ['build', 'dist']) cpSync(part, path.join(project, part), { recursive: true });
  mkdirSync(path.join(project, 'node_modules/electron/dist'), { recursive: true });
  writeFileSync(path.join(project, 'node_modules/electron/package.json'), '{"name":"electron","version":"0.0.0"}');
});
afterEach(() => rmSync(project, { recursive: true, force: true }));

const inElectron = (name: string) => path.join(project, 'node_modules/electron', name);

function runtime(script: string): void {
  writeFileSync(inElectron('path.txt'), 'electron');
  executable(inElectron('dist/electron'), script);
}

function executable(file: string, script: string): void {
  writeFileSync(file, `#!/bin/sh\n${script}\n`);
  chmodSync(file, 0o755);
}

/** What the start script says until it ends by itself or has said where the page is; then it is stopped. */
function start(args: string[] = [], tools = '', script = 'start.mjs'): Promise<{ said: string; code: number | null }> {
  const child = spawn(process.execPath, [path.join(project, 'build', script), ...args], {
    cwd: project,
    env: { ...process.env, DISPLAY: ':99', HOME: project, XDG_CONFIG_HOME: project, PATH: tools || '/nowhere' },
  });
  let said = '';
  const hear = (chunk: Buffer) => {
    said += chunk.toString();
    if (said.includes('Ctrl+C stops it.')) setTimeout(() => child.kill('SIGTERM'), 500);
  };
  child.stdout.on('data', hear);
  child.stderr.on('data', hear);
  return new Promise((resolve) => child.on('close', (code) => resolve({ said, code })));
}

describe.skipIf(process.platform === 'win32')('npm start on a machine with a display', () => {
  test('opens the window where the runtime is there, and hands it the design that was named', async () => {
    runtime('echo "window: $@"');
    const { said, code } = await start(['plan.gapwright']);
    expect(said).toMatch(/^window: (--no-sandbox )?\S+ \S+\/plan\.gapwright\n$/);
    expect(said).toContain(`${project}/ ${project}/plan.gapwright`);
    expect(code).toBe(0);
  });

  test('serves to a browser where the runtime ends at once, as under a forbidden sandbox', async () => {
    runtime('exit 1');
    const { said } = await start();
    expect(said).toContain('Serving to a browser on this machine (Electron did not start (it ended with 1)).');
    expect(said).toMatch(/^Gapwright is at http:\/\/127\.0\.0\.1:\d+\/\?key=\S+$/m);
  });

  test('fetches the runtime when it is missing, then opens the window', async () => {
    const script = `const fs = require('node:fs'); fs.writeFileSync(__dirname + '/dist/electron', '#!/bin/sh\\necho window', { mode: 0o755 });`;
    writeFileSync(inElectron('install.js'), `${script} fs.writeFileSync(__dirname + '/path.txt', 'electron');`);
    const { said, code } = await start();
    expect(said).toMatch(/fetching it .*\nwindow\n$/);
    expect(code).toBe(0);
  });

  test('says in one line why the runtime could not be fetched, and serves', async () => {
    writeFileSync(inElectron('install.js'), `console.error('RequestError: no such host'); process.exit(1);`);
    const { said } = await start();
    expect(said).toContain('(no Electron: it is not here and could not be fetched (no such host)).');
    expect(said).toContain('No browser could be opened: open the address above yourself.');
    expect(existsSync(inElectron('path.txt'))).toBe(false);
  });

  test.runIf(process.platform === 'linux')('opens the printed address in the browser of the system', async () => {
    const tools = path.join(project, 'tools');
    mkdirSync(tools);
    executable(path.join(tools, 'xdg-open'), `echo "$1" > "${project}/opened"`);
    const { said } = await start(['--browser'], tools);
    expect(said).not.toContain('No browser');
    expect(said).toContain(`Gapwright is at ${readFileSync(path.join(project, 'opened'), 'utf8').trim()}\n`);
  });
});

test('npm run dist says plainly what it lacks where the runtime cannot be fetched, and ends as failed', async () => {
  writeFileSync(inElectron('install.js'), `console.error('RequestError: no such host'); process.exit(1);`);
  const { said, code } = await start([], '', 'dist.mjs');
  expect(said).toContain(
    'No installer can be made: the Electron runtime is part of it, but it is not here and could not be fetched (no such host).',
  );
  expect(said).toContain('With a network connection, `npm run dist` fetches it and goes on.');
  expect(code).toBe(1);
});
