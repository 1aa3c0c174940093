import { VERSION } from '../../plan/envelope.ts';
import type { Plan } from '../../plan/plan.ts';
import { writePlan } from '../format/write-plan.ts';
import type { StepEntry, StepKind, StorePort } from './store-port.ts';
import { sayStoreTrouble } from './store-trouble.ts';

/** What is saved: a document that tells of every step it takes, right after it took it. */
export interface Edited<E extends StepEntry> {
  plan(): Plan;
  /** Gives back how to stop listening. */
  onCommit(listener: (entry: E, kind: StepKind, revision: number) => void): () => void;
}

export interface AutosaveOf<E extends StepEntry> {
  readonly port: StorePort;
  readonly edited: Edited<E>;
  /** As `openJob` gave them; for a job just made: its number from there, nothing to undo, whole. */
  readonly opened: {
    readonly seq: number;
    readonly undo: readonly E[];
    readonly redo: readonly E[];
    readonly whole: boolean;
  };
  readonly writer: string;
  /** Time as ISO 8601. */
  readonly now: () => string;
  /** Runs something later and gives back how to call it off. Injected, so that tests need not wait. */
  readonly later?: (run: () => void, ms: number) => () => void;
  /** A sentence when something could not be kept, null when everything is again. */
  readonly onTrouble: (sentence: string | null) => void;
}

export interface Autosave {
  /** Keeps everything now: before the page is hidden, and before the job is given to another tab. Never rejects. */
  flush(): Promise<void>;
  /** Keeps everything and listens no more. */
  stop(): Promise<void>;
  /** Is there a step that is not kept yet? */
  behind(): boolean;
}

/** A pause in the work: then the steps are folded into a snapshot. */
const PAUSE_MS = 3000;
/** Past this many steps opening would grow slow, so a snapshot does not wait for a pause. */
const MOST_STEPS = 100;
/** Steps that can be taken back after the job was closed. */
const MOST_UNDO = 200;

const inTime = (run: () => void, ms: number): (() => void) => {
  const timer = setTimeout(run, ms);
  return () => clearTimeout(timer);
};

/**
 * Keeps a job while it is edited: every step at once and in order, a snapshot when the hand rests. Where a step could not
 * be kept, the next try keeps the whole document, so that nothing hangs on a step that is missing.
 */
export function createAutosave<E extends StepEntry>(of: AutosaveOf<E>): Autosave {
  const { port, edited, writer, now, onTrouble, later = inTime } = of;
  let { seq, undo, redo } = of.opened;
  let kept = seq;
  let inSnapshot = seq;
  let torn = !of.opened.whole;
  let troubled = false;
  let callOff: () => void = () => {};
  let tail: Promise<void> = Promise.resolve();

  const queue = (work: () => Promise<void>): Promise<void> => {
    tail = tail.then(work).catch((error: unknown) => {
      torn = true;
      troubled = true;
      onTrouble(sayStoreTrouble(error));
      rest();
    });
    return tail;
  };
  const snapshot = async (): Promise<void> => {
    if (inSnapshot === seq && !torn) return;
    const plan = edited.plan();
    const savedAt = now();
    const at = seq;
    const text = writePlan(plan, { savedAt, writer, blobs: {} });
    const row = { id: plan.id, name: plan.name, savedAt };
    await port.writeSnapshot(row, { job: plan.id, seq: at, text, undo, redo });
    inSnapshot = at;
    kept = Math.max(kept, at);
    torn = false;
    if (troubled) onTrouble(null);
    troubled = false;
  };
  const rest = (): void => {
    callOff();
    callOff = later(() => void queue(snapshot), PAUSE_MS);
  };
  const step = (entry: E, kind: StepKind): void => {
    if (kind === 'do') [undo, redo] = [[...undo, entry].slice(-MOST_UNDO), []];
    else if (kind === 'undo') [undo, redo] = [undo.slice(0, -1), [...redo, entry]];
    else [undo, redo] = [[...undo, entry], redo.slice(0, -1)];
    seq += 1;
    const row = { job: edited.plan().id, seq, version: VERSION, kind, entry };
    queue(async () => {
      if (torn || row.seq <= inSnapshot) return;
      await port.append(row);
      kept = row.seq;
    });
    if (seq - inSnapshot >= MOST_STEPS) queue(snapshot);
    else rest();
  };

  const silence = edited.onCommit(step);
  if (torn) queue(snapshot);
  const flush = (): Promise<void> => {
    callOff();
    return queue(snapshot);
  };
  return {
    flush,
    async stop() {
      silence();
      await flush();
      callOff();
    },
    behind: () => kept < seq || torn,
  };
}
