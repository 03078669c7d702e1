import { type ChildProcess, spawn } from 'node:child_process';

/** Runs `npm start`'s script with a home of its own until it has said where the app is. */
export function startedHost(
  home: string,
  args: string[],
  env: Record<string, string> = {},
): { child: ChildProcess; told: Promise<{ said: string; address: string }> } {
  const child = spawn(process.execPath, ['build/start.mjs', ...args], {
    env: { ...process.env, HOME: home, XDG_CONFIG_HOME: home, APPDATA: home, ...env },
    stdio: ['ignore', 'pipe', 'pipe'],
  });
  const told = new Promise<{ said: string; address: string }>((resolve, reject) => {
    let said = '';
    const hear = (chunk: Buffer) => {
      said += chunk.toString();
      const address = /^Gapwright is at (\S+)\n/m.exec(said)?.[1];
      if (address) resolve({ said, address });
    };
    child.stdout.on('data', hear);
    child.stderr.on('data', hear);
    child.on('close', (code) => reject(new Error(`ended with ${code}: ${said}`)));
  });
  return { child, told };
}
