#!/usr/bin/env node
// npm start: the app in its own window; without the Electron runtime or a display, the same app served to a browser on this machine.
//   --browser   serve it, whether or not Electron is here      --no-open   serve it and open nothing
import { spawn } from 'node:child_process';
import { createRequire } from 'node:module';
import path from 'node:path';
import { parseArgs } from 'node:util';
import { electronRuntime } from './electron-runtime.mjs';
import { makeFresh, root } from './fresh.mjs';

const { values: option, positionals } = parseArgs({
  options: { browser: { type: 'boolean' }, 'no-open': { type: 'boolean' } },
  allowPositionals: true,
});
const hasDisplay = process.platform !== 'linux' || Boolean(process.env.DISPLAY || process.env.WAYLAND_DISPLAY);

if (!makeFresh(['renderer', 'window', 'served'])) process.exit(1);

const why = await windowOrReason();
if (why !== undefined) await serveInstead(why);

/** Runs the window until it is closed; or says why it cannot. */
async function windowOrReason() {
  if (option.browser || option['no-open']) return 'as asked';
  if (!hasDisplay) return 'this machine has no display';
  const { executable, missing } = electronRuntime();
  if (missing) return `no Electron: ${missing}`;
  const began = Date.now();
  const code = await runElectron(executable);
  // Where the system forbids Electron's sandbox it ends at once; a window that was used ends otherwise.
  if (code !== 0 && Date.now() - began < 5000) return `Electron did not start (it ended with ${code})`;
  process.exitCode = code;
  return undefined;
}

function runElectron(executable) {
  const asRoot = process.platform === 'linux' && process.getuid() === 0;
  const args = [...(asRoot ? ['--no-sandbox'] : []), root, ...positionals.map((file) => path.resolve(file))];
  return new Promise((resolve) => {
    spawn(executable, args, { stdio: 'inherit' })
      .on('error', (error) => resolve(error.message))
      .on('close', (code, signal) => resolve(code ?? signal));
  });
}

async function serveInstead(why) {
  const { serve } = createRequire(import.meta.url)(path.join(root, 'dist/served/server.cjs'));
  const host = await serve({ pages: path.join(root, 'dist/renderer') });
  console.log(`Serving to a browser on this machine (${why}).`);
  console.log(`Gapwright is at ${host.address}`);
  console.log('Ctrl+C stops it.');
  if (hasDisplay && !option['no-open']) openBrowser(host.address);
  for (const signal of ['SIGINT', 'SIGTERM', 'SIGHUP']) {
    process.once(signal, async () => {
      if (host.hasUnsaved()) console.log('\nThe design has changes that are in no file. They are kept, and offered at the next start.');
      await host.close();
      process.exit(0);
    });
  }
}

function openBrowser(address) {
  const [command, ...args] = { win32: ['rundll32', 'url.dll,FileProtocolHandler', address], darwin: ['open', address] }[
    process.platform
  ] ?? ['xdg-open', address];
  const sayNone = () => console.log('No browser could be opened: open the address above yourself.');
  spawn(command, args, { stdio: 'ignore', detached: true })
    .on('error', sayNone)
    .on('exit', (code) => code && sayNone())
    .unref();
}
