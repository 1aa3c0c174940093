import { VERSION } from '../../plan/envelope.ts';
import type { Plan } from '../../plan/plan.ts';
import { type ReadPlan, readPlan } from '../format/read-plan.ts';
import { writePlan } from '../format/write-plan.ts';
import { type Replayed, replay, stepOn } from './replay.ts';
import type { JobRow, Snapshot, StepEntry, StepRow, StorePort } from './store-port.ts';

/** A job as it was left: read like any file, with its steps back and forth. */
export interface OpenedJob<E extends StepEntry> {
  readonly read: ReadPlan;
  readonly undo: readonly E[];
  readonly redo: readonly E[];
  readonly seq: number;
  /** False where something was cut off: the autosave then begins with a snapshot, so that steps follow each other again. */
  readonly whole: boolean;
  /** What was lost on the way, in a sentence; empty where nothing was. */
  readonly sentence: string;
}

type Envelope = Record<string, unknown> & { readonly plan: object; readonly version: number };

function envelopeOf(snapshot: Snapshot): Envelope | null {
  try {
    const envelope = JSON.parse(snapshot.text);
    const isOne = typeof envelope?.plan === 'object' && envelope.plan !== null && Number.isInteger(envelope.version);
    return isOne ? envelope : null;
  } catch {
    return null;
  }
}

const readBack = (envelope: Envelope, plan: object): ReadPlan => readPlan(JSON.stringify({ ...envelope, plan }));
const opens = (read: ReadPlan): boolean => read.kind === 'ok' || read.kind === 'newer';

/** Steps one by one, each checked, up to the last that leaves a sound plan. */
function longestSound(from: Replayed, rows: readonly StepRow[], envelope: Envelope): { at: Replayed; cut: number } {
  let at = from;
  for (const [done, row] of rows.entries()) {
    const next = stepOn(at, row, envelope.version);
    if (next === null || !opens(readBack(envelope, next.plan))) return { at, cut: rows.length - done };
    at = next;
  }
  return { at, cut: 0 };
}

function sayCut(cut: number, fellBack: boolean): string {
  const steps = cut === 1 ? 'The last step' : `The last ${cut} steps`;
  const parts = [
    ...(fellBack ? ['The latest saved state could not be read, so the one before it was opened.'] : []),
    ...(cut > 0
      ? [`${steps} could not be read and ${cut === 1 ? 'is' : 'are'} missing; everything before is here.`]
      : []),
  ];
  return parts.join(' ');
}

async function openSnapshot<E extends StepEntry>(
  port: StorePort,
  snapshot: Snapshot,
  fellBack: boolean,
): Promise<OpenedJob<E> | null> {
  const envelope = envelopeOf(snapshot);
  if (envelope === null) return null;
  const rows = await port.steps(snapshot.job, snapshot.seq);
  const from: Replayed = { plan: envelope.plan, undo: snapshot.undo, redo: snapshot.redo, seq: snapshot.seq };
  let { at, cut } = replay(from, rows, envelope.version);
  let read = readBack(envelope, at.plan);
  if (!opens(read)) {
    if (!opens(readBack(envelope, envelope.plan))) return null;
    ({ at, cut } = longestSound(from, rows, envelope));
    read = readBack(envelope, at.plan);
  }
  // Steps of an older version do not fit the plan as it is now.
  const same = envelope.version === VERSION;
  const undo = (same ? at.undo : []) as readonly E[];
  const redo = (same ? at.redo : []) as readonly E[];
  // Past the last row even where rows were cut, so that the next step takes no number of a broken one.
  const seq = Math.max(at.seq, rows.at(-1)?.seq ?? 0);
  return { read, undo, redo, seq, whole: cut === 0 && !fellBack && same, sentence: sayCut(cut, fellBack) };
}

/**
 * Opens a job: its last snapshot and every step since. A tail that cannot be read is cut off with a sentence; a snapshot
 * that cannot be read gives way to the one before. Nothing is deleted by opening. Rejects only where the storage does.
 */
export async function openJob<E extends StepEntry>(port: StorePort, job: string): Promise<OpenedJob<E>> {
  const snapshots = await port.snapshots(job);
  for (const [i, snapshot] of snapshots.entries()) {
    const opened = await openSnapshot<E>(port, snapshot, i > 0);
    if (opened !== null) return opened;
  }
  const none = { undo: [], redo: [], seq: snapshots[0]?.seq ?? 0, whole: false, sentence: '' };
  const [latest] = snapshots;
  if (!latest) return { read: { kind: 'notPlan', sentence: 'This job is no longer on this device.' }, ...none };
  return { read: readPlan(latest.text), ...none };
}

/** Jobs on this device by name, those of one name by when they were saved, latest first. */
export async function listJobs(port: StorePort): Promise<readonly JobRow[]> {
  const byName = new Intl.Collator('en', { numeric: true, sensitivity: 'base' });
  const later = (a: JobRow, b: JobRow): number => (a.savedAt < b.savedAt ? 1 : a.savedAt > b.savedAt ? -1 : 0);
  return [...(await port.jobs())].sort((a, b) => byName.compare(a.name, b.name) || later(a, b));
}

export interface SaveWith {
  readonly savedAt: string;
  readonly writer: string;
}

/** Takes a new job, or one from a file, into the storage. */
export async function createJob(port: StorePort, plan: Plan, { savedAt, writer }: SaveWith): Promise<void> {
  const text = writePlan(plan, { savedAt, writer, blobs: {} });
  const row: JobRow = { id: plan.id, name: plan.name, savedAt };
  const [before] = await port.snapshots(plan.id);
  const rows = await port.steps(plan.id, before?.seq ?? 0);
  const seq = (rows.at(-1)?.seq ?? before?.seq ?? -1) + 1;
  await port.writeSnapshot(row, { job: plan.id, seq, text, undo: [], redo: [] });
}
