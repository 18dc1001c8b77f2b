/** The newest checked version of every open document, and whoever waits for it: hints must not run ahead of the check. */
import type { Snapshot } from "./language/frame-service.ts";

interface Entry {
  readonly version: number;
  /** undefined where checking broke down */
  readonly snapshot: Snapshot | undefined;
}

interface Waiter {
  readonly version: number;
  readonly give: (snapshot: Snapshot | undefined) => void;
}

export interface Published {
  readonly put: (uri: string, version: number, snapshot: Snapshot | undefined) => void;
  readonly forget: (uri: string) => void;
  /** Waits for a version. @returns undefined when it was overtaken, broke down, or its document closed */
  readonly at: (uri: string, version: number) => Promise<Snapshot | undefined>;
}

export function createPublished(): Published {
  const newest = new Map<string, Entry>();
  const waiting = new Map<string, Set<Waiter>>();

  const pick = ({ version, snapshot }: Entry, wanted: number): Snapshot | undefined =>
    version === wanted ? snapshot : undefined;

  return Object.freeze({
    put(uri: string, version: number, snapshot: Snapshot | undefined) {
      const entry = { version, snapshot };
      newest.set(uri, entry);
      const own = waiting.get(uri) ?? new Set();
      for (const waiter of [...own]) {
        if (waiter.version > version) continue;
        own.delete(waiter);
        waiter.give(pick(entry, waiter.version));
      }
    },
    forget(uri: string) {
      newest.delete(uri);
      for (const { give } of waiting.get(uri) ?? []) give(undefined);
      waiting.delete(uri);
    },
    async at(uri: string, version: number) {
      const entry = newest.get(uri);
      if (entry && entry.version >= version) return pick(entry, version);
      return new Promise<Snapshot | undefined>((give) => {
        waiting.set(uri, (waiting.get(uri) ?? new Set()).add({ version, give }));
      });
    },
  });
}
