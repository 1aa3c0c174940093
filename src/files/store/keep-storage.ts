/** The part of the browser's storage manager that is used. */
export interface Storage {
  persisted?(): Promise<boolean>;
  persist?(): Promise<boolean>;
  estimate?(): Promise<{ readonly usage?: number; readonly quota?: number }>;
}

export interface Keeping {
  /** Will the browser keep jobs until the user removes them? Null: it does not say. */
  readonly kept: boolean | null;
  readonly sentence: string;
}

/** Asks the browser never to clear the jobs by itself. Never rejects. */
export async function askToKeep(storage: Storage | undefined): Promise<Keeping> {
  try {
    const kept = (await storage?.persisted?.()) === true ? true : await storage?.persist?.();
    if (kept === true) return { kept, sentence: 'Jobs are kept on this device until you remove them.' };
    if (kept === false) {
      return {
        kept,
        sentence: 'This browser may clear jobs when the device runs short of room. Save important jobs as files.',
      };
    }
  } catch {
    // A storage that may not be asked is one that may be cleared: said below.
  }
  return { kept: null, sentence: 'This browser does not say how long it keeps jobs. Save important jobs as files.' };
}

/** What the browser has said already, without asking it anything. Never rejects. */
export async function isKept(storage: Storage | undefined): Promise<boolean | null> {
  try {
    return (await storage?.persisted?.()) ?? null;
  } catch {
    return null;
  }
}

/** How much of the device's storage jobs and the tool itself take, and may take, in megabytes. */
export interface Use {
  readonly usedMb: number;
  readonly mayMb: number;
}

/** As far as the browser tells; null where it does not. Never rejects. */
export async function storageUse(storage: Storage | undefined): Promise<Use | null> {
  try {
    const told = await storage?.estimate?.();
    if (told?.quota === undefined || told.usage === undefined) return null;
    return { usedMb: told.usage / 1_000_000, mayMb: told.quota / 1_000_000 };
  } catch {
    return null;
  }
}

/** "1.2 MB of 2.1 GB": small figures with a tenth, large ones without. */
export function sayUse({ usedMb, mayMb }: Use): string {
  const say = (mb: number): string => {
    if (mb >= 1000) return `${(mb / 1000).toFixed(1)} GB`;
    return mb < 10 ? `${mb.toFixed(1)} MB` : `${Math.round(mb)} MB`;
  };
  return `${say(usedMb)} of ${say(mayMb)}`;
}

/** Room left in megabytes, as far as the browser tells; null where it does not. */
export async function roomLeftMb(storage: Storage | undefined): Promise<number | null> {
  try {
    const told = await storage?.estimate?.();
    if (told?.quota === undefined || told.usage === undefined) return null;
    return Math.max(0, Math.floor((told.quota - told.usage) / 1_000_000));
  } catch {
    return null;
  }
}
