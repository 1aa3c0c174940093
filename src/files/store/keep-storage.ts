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
