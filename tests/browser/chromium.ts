import { existsSync, mkdirSync, mkdtempSync, readFileSync, renameSync, rmSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import chromium from '@sparticuz/chromium';

/**
 * Our own list: the one that the package brings switches web security off, which would hide what the content policy forbids. Without a graphics card one
 * would be played by the processor, which is busy enough.
 */
export const chromiumArgs = [
  '--no-sandbox',
  '--disable-dev-shm-usage',
  '--disable-gpu',
  '--font-render-hinting=none',
  '--disable-background-networking',
  '--disable-component-update',
  '--disable-sync',
  '--no-first-run',
];

/** The browser, unpacked once per version; safe when two runs begin together or one was stopped half-way. */
export async function chromiumPath(): Promise<string> {
  const manifest = path.join(path.dirname(createRequire(import.meta.url).resolve('@sparticuz/chromium')), '../../package.json');
  const { version } = JSON.parse(readFileSync(manifest, 'utf8')) as { version: string };
  const cache = path.resolve('node_modules/.cache');
  const unpacked = path.join(cache, `chromium-${version}`);
  if (!existsSync(path.join(unpacked, 'chromium'))) {
    mkdirSync(cache, { recursive: true });
    const aside = mkdtempSync(path.join(cache, 'chromium-aside-'));
    await unpackInto(aside);
    try {
      renameSync(aside, unpacked);
    } catch {
      rmSync(aside, { recursive: true, force: true }); // another run was first
    }
  }
  return path.join(unpacked, 'chromium');
}

/** The package unpacks into the system's temporary folder, which it looks up at each call. */
async function unpackInto(folder: string): Promise<void> {
  const before = process.env['TMPDIR'];
  process.env['TMPDIR'] = folder;
  try {
    await chromium.executablePath();
  } finally {
    if (before === undefined) delete process.env['TMPDIR'];
    else process.env['TMPDIR'] = before;
  }
}
