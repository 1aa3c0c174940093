/** The part of the browser's lock manager that is used: whoever holds the lock of a job may write it. */
export interface Locks {
  request(
    name: string,
    options: { ifAvailable?: boolean; steal?: boolean; signal?: AbortSignal },
    hold: (lock: unknown) => Promise<void>,
  ): Promise<unknown>;
}

/** The part of a broadcast channel that is used to ask the other tab to let go. */
export interface Channel {
  postMessage(message: unknown): void;
  addEventListener(type: 'message', listener: (event: { readonly data: unknown }) => void): void;
  close(): void;
}

export interface ClaimWith {
  /** Undefined where the browser has no locks: every tab then may write, as it was before there were any. */
  readonly locks: Locks | undefined;
  readonly channel: (name: string) => Channel;
  /**
   * Called in the tab that loses the job, before it loses it: turn read-only, keep what is not kept. The other tab waits
   * for the promise, though not for ever.
   */
  readonly onTaken: (sentence: string) => Promise<void> | void;
  /** How long the other tab may take to let go before the job is taken from it. */
  readonly patienceMs?: number;
}

export type Claim =
  | { readonly mine: true; readonly release: () => void }
  /** Read the job again after taking it over: the other tab kept its last steps while it let go. */
  | { readonly mine: false; readonly sentence: string; readonly takeOver: () => Promise<Claim & { mine: true }> };

const GIVE_UP = 'give-up';
const PATIENCE_MS = 3000;
const ELSEWHERE = 'This job is open in another tab. You can look at it here, or take it over.';
const TAKEN = 'This job was taken over by another tab. You can only look at it here.';

type Mine = Claim & { mine: true };
const nameOf = (job: string): string => `kickset-job-${job}`;

/** Holds the lock until let go, answering the other tab's call; null where somebody else holds it. */
function hold(job: string, given: ClaimWith, how: { ifAvailable?: boolean; steal?: boolean; signal?: AbortSignal }) {
  const { locks, channel, onTaken } = given;
  return new Promise<Mine | null>((settle, fail) => {
    let letGo: () => void = () => {};
    let held = false;
    let over = false;
    const wire = channel(nameOf(job));
    const end = (): void => {
      if (over) return;
      over = true;
      wire.close();
      letGo();
    };
    const taken = async (): Promise<void> => {
      if (over || !held) return;
      held = false;
      try {
        await onTaken(TAKEN);
      } catch {
        // What could not be kept was told where it happened; holding on to the job would not keep it either.
      }
      end();
    };
    wire.addEventListener('message', (event) => {
      if (event.data === GIVE_UP) void taken();
    });
    const request = locks?.request(nameOf(job), how, (lock) => {
      if (lock === null) {
        wire.close();
        settle(null);
        return Promise.resolve();
      }
      held = true;
      settle({ mine: true, release: end });
      return new Promise<void>((resolve) => {
        letGo = resolve;
      });
    });
    request?.catch((error: unknown) => {
      // Rejected after it was held means stolen: the other tab lost patience with this one.
      if (held) return taken();
      wire.close();
      fail(error);
    });
  });
}

async function take(job: string, given: ClaimWith): Promise<Mine> {
  const call = given.channel(nameOf(job));
  call.postMessage(GIVE_UP);
  call.close();
  const patience = new AbortController();
  const timer = setTimeout(() => patience.abort(), given.patienceMs ?? PATIENCE_MS);
  try {
    const mine = await hold(job, given, { signal: patience.signal });
    if (mine !== null) return mine;
  } catch {
    // The other tab sleeps or is stuck: it is asked no longer.
  } finally {
    clearTimeout(timer);
  }
  const stolen = await hold(job, given, { steal: true });
  if (stolen === null) throw new Error('a stolen lock is always granted');
  return stolen;
}

/** Claims a job for this tab. Where another has it, says so and offers to take it over. */
export async function claimJob(job: string, given: ClaimWith): Promise<Claim> {
  if (given.locks === undefined) return { mine: true, release: () => {} };
  const mine = await hold(job, given, { ifAvailable: true });
  return mine ?? { mine: false, sentence: ELSEWHERE, takeOver: () => take(job, given) };
}
