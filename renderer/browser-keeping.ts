import type { Host, KeepingHost } from '../electron/contract';

type Keeping = Pick<Host, 'readRecovery' | 'writeRecovery' | 'readSettings' | 'writeSettings' | 'setUnsaved'>;

/**
 * What must outlive the page goes to the server it came from, or to the browser's own storage where that is not our host. Tabs are told apart by
 * a name that each draws; each holds a lock of its name, which the browser takes away with the tab.
 */
export function browserKeeping(): Keeping {
  const page = crypto.randomUUID();
  let lock: Promise<void> | undefined;
  return {
    async readRecovery() {
      await (lock ??= holdLock(page));
      // One tab after another: a tab that is just starting must not be taken for one that is gone.
      return navigator.locks.request('gapwright starts', async () => call('readRecovery', page, await presentPages()));
    },
    writeRecovery: (text) => call('writeRecovery', page, text),
    readSettings: () => call('readSettings'),
    writeSettings: (text) => call('writeSettings', text),
    setUnsaved: (unsaved) => call('setUnsaved', page, unsaved),
  };
}

const lockName = 'gapwright page ';

/** Held until the tab is gone; settled as soon as it is held. */
function holdLock(page: string): Promise<void> {
  return new Promise((resolve, reject) => {
    const untilGone = () => new Promise<never>(() => resolve());
    navigator.locks.request(lockName + page, untilGone).catch(reject);
  });
}

async function presentPages(): Promise<string[]> {
  const { held = [] } = await navigator.locks.query();
  return held.flatMap(({ name }) => (name?.startsWith(lockName) ? [name.slice(lockName.length)] : []));
}

/** Whether the page comes from the served host; settled by the first answer. */
let served: boolean | undefined;

async function call<K extends keyof KeepingHost>(
  name: K,
  ...args: Parameters<KeepingHost[K]>
): Promise<Awaited<ReturnType<KeepingHost[K]>>> {
  type Value = Awaited<ReturnType<KeepingHost[K]>>;
  if (served !== false) {
    const response = await fetch(`/host/${name}`, {
      method: 'POST',
      headers: { 'content-type': 'application/json' },
      body: JSON.stringify({ args }),
    });
    served ??= response.headers.get('content-type')?.includes('json') ?? false;
    if (served) {
      const answer = (await response.json()) as { value?: Value; error?: string };
      if (answer.error !== undefined) throw new Error(answer.error);
      return answer.value as Value;
    }
  }
  const keep = localKeeping[name] as (...values: Parameters<KeepingHost[K]>) => Promise<Value>;
  return keep(...args);
}

const recoveryKey = (page: string) => `recovery ${page}`;

const localKeeping: KeepingHost = {
  readRecovery: (page, present) => {
    const own = recoveryKey(page);
    const others = present.filter((other) => other !== page).map(recoveryKey);
    const keys = [own, ...Object.keys(localStorage)];
    const left = keys.find((key) => key.startsWith(recoveryKey('')) && !others.includes(key) && localStorage.getItem(key) !== null);
    const text = left === undefined ? null : localStorage.getItem(left);
    if (left !== undefined && left !== own) {
      localStorage.removeItem(left);
      putLocal(own, text);
    }
    return Promise.resolve(text);
  },
  writeRecovery: (page, text) => Promise.resolve(putLocal(recoveryKey(page), text)),
  readSettings: () => Promise.resolve(localStorage.getItem('settings')),
  writeSettings: (text) => Promise.resolve(putLocal('settings', text)),
  setUnsaved: () => Promise.resolve(),
};

function putLocal(key: string, text: string | null): void {
  if (text === null) localStorage.removeItem(key);
  else localStorage.setItem(key, text);
}
