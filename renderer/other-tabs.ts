/** A file as the browser hands it out; only it can tell whether two are the same file. */
export interface SameFile {
  isSameEntry(other: SameFile): Promise<boolean>;
}

type Message = { ask: string; file: SameFile } | { yes: string };

/** How long the other tabs have to say that they hold a file. [ms] */
const patience = 300;

/** Asks the other tabs of this program about files, and answers them. */
export function otherTabs(held: () => Iterable<SameFile>) {
  const channel = new BroadcastChannel('gapwright files');
  const waiting = new Map<string, () => void>();
  channel.onmessage = ({ data }: MessageEvent<Message>) => {
    if ('yes' in data) waiting.get(data.yes)?.();
    else void isAmong(data.file, held()).then((same) => same && channel.postMessage({ yes: data.ask } satisfies Message));
  };
  return {
    async haveOpen(file: SameFile): Promise<boolean> {
      const ask = crypto.randomUUID();
      const said = new Promise<boolean>((resolve) => {
        waiting.set(ask, () => resolve(true));
        setTimeout(() => resolve(false), patience);
      });
      channel.postMessage({ ask, file } satisfies Message);
      return said.finally(() => waiting.delete(ask));
    },
  };
}

async function isAmong(file: SameFile, held: Iterable<SameFile>): Promise<boolean> {
  for (const each of held) if (await each.isSameEntry(file)) return true;
  return false;
}
