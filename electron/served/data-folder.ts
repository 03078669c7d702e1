import { homedir } from 'node:os';
import path from 'node:path';

/** Where the system keeps a user's application data: the same folder that the window host uses, so that work crosses from one to the other. */
export function dataFolder(platform = process.platform, env = process.env, home = homedir()): string {
  const base = {
    win32: env['APPDATA'] ?? path.join(home, 'AppData', 'Roaming'),
    darwin: path.join(home, 'Library', 'Application Support'),
  }[platform as string];
  return path.join(base ?? env['XDG_CONFIG_HOME'] ?? path.join(home, '.config'), 'Gapwright');
}
