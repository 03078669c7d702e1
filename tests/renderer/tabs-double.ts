/** What the tabs of one browser share, in memory: locks that go with the tab that holds them, and the storage. */
export function tabsDouble() {
  const held = new Map<string, Tab>();
  const waiting: { name: string; tab: Tab; grant: () => void }[] = [];
  const grantNext = (name: string): void => {
    const next = waiting.findIndex((each) => each.name === name && !each.tab.closed);
    if (next >= 0 && !held.has(name)) waiting.splice(next, 1)[0].grant();
  };
  const free = (name: string): void => {
    held.delete(name);
    grantNext(name);
  };

  class Tab {
    closed = false;
    /** The part of LockManager in use here: exclusive locks, granted in turn, freed when their work has settled. */
    readonly locks = {
      request: async <T>(name: string, work: () => Promise<T>): Promise<T> => {
        await new Promise<void>((grant) => {
          waiting.push({ name, tab: this, grant: () => (held.set(name, this), grant()) });
          grantNext(name);
        });
        return work().finally(() => free(name));
      },
      query: (): Promise<Pick<LockManagerSnapshot, 'held'>> => Promise.resolve({ held: [...held.keys()].map((name) => ({ name })) }),
    };
    close(): void {
      this.closed = true;
      for (const [name, tab] of held) if (tab === this) free(name);
    }
  }

  return { newTab: () => new Tab(), storage: new StorageDouble() };
}

/** Its items are its own keys, as in a browser. */
class StorageDouble {
  [item: string]: unknown;
  getItem(key: string): string | null {
    return Object.hasOwn(this, key) ? (this[key] as string) : null;
  }
  setItem(key: string, value: string): void {
    this[key] = value;
  }
  removeItem(key: string): void {
    delete this[key];
  }
}
