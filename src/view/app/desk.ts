import { createStore } from 'zustand/vanilla';
import type { HistoryEntry } from '../../editor/editor-api.ts';
import type { ReadPlan } from '../../files/format/read-plan.ts';
import { type Claim, claimJob } from '../../files/store/job-lock.ts';
import { createJob, openJob } from '../../files/store/open-job.ts';
import type { StorePort } from '../../files/store/store-port.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Evaluator } from '../../report/report.ts';
import { startEvaluator } from '../../worker/evaluator.ts';
import { handSettings } from '../hands/hand-settings.ts';
import { createSession } from './create-session.ts';
import type { KeptSoFar } from './keep-job.ts';
import { newPlan } from './new-plan.ts';
import { screen } from './screen.ts';
import type { Session } from './session.ts';
import { nowIso, storage, WRITER } from './storage.ts';

export interface DeskState {
  readonly session: Session | null;
  /** What stood in the way of the last thing that was opened, in words. */
  readonly trouble: string | null;
}

/** What lies on the desk: the open job. */
export const desk = createStore<DeskState>(() => ({ session: null, trouble: null }));

export const say = (trouble: string | null): void => desk.setState({ trouble });

let evaluate: Evaluator | undefined;

/** The claim on the open job. It is handed on where that job is opened again: a lock let go is not free at once. */
let holds: Claim | null = null;

function letGo(of: Claim | null): void {
  if (of?.mine) of.release();
}

const claim = (job: string): Promise<Claim> =>
  claimJob(job, {
    locks: navigator.locks,
    channel: (name) => new BroadcastChannel(name),
    onTaken: async (sentence) => {
      const { session } = desk.getState();
      if (session?.id !== job) return;
      holds = null;
      await session.flush();
      session.editor.setReadOnly(sentence);
      session.kept.setState({ elsewhere: true });
    },
  });

/** The address names the job, so that a reload and a second tab find it again. */
const nameInAddress = (job: string | null): void =>
  history.replaceState(null, '', job === null ? location.pathname : `#${encodeURIComponent(job)}`);

let stopKeepingPlace: () => void = () => undefined;

/** Remembered from when the drawing stands: nothing of it is needed before. */
function keepPlaceOf(session: Session, isKept: boolean): void {
  import('../hands/keep-place.ts').then(
    ({ keepPlace }) => {
      if (desk.getState().session === session) stopKeepingPlace = keepPlace(session, isKept);
    },
    () => undefined,
  );
}

interface ToOpen {
  readonly plan: Plan;
  readonly soFar: KeptSoFar | null;
  readonly readOnly: string | null;
  readonly claim: Claim;
  readonly port: StorePort;
}

async function put({ plan, soFar, readOnly, claim: own, port }: ToOpen): Promise<void> {
  evaluate ??= startEvaluator();
  stopKeepingPlace();
  stopKeepingPlace = () => undefined;
  await desk.getState().session?.close();
  if (holds !== own) letGo(holds);
  holds = own;
  screen.setState({ over: null, chapter: null, finding: null, tray: false, sheetStop: 'low' });
  const session = createSession({
    plan,
    evaluate,
    port,
    soFar,
    claim: own,
    readOnly: own.mine ? readOnly : own.sentence,
    onFirst: (first) => nameInAddress(first.id),
    onTakeOver: async (now) => {
      const again = await claim(now.id);
      await openStored(now.id, again.mine ? again : await again.takeOver());
    },
  });
  session.editor.setPenUse(handSettings.getState().pen);
  // A place that cannot be fetched is not worth a job that does not open.
  if (soFar !== null)
    await import('../hands/put-place.ts').then(
      ({ putBack }) => putBack(session.editor, plan.id),
      () => undefined,
    );
  desk.setState({ session });
  keepPlaceOf(session, soFar !== null);
  nameInAddress(soFar === null ? null : plan.id);
}

/** A fresh page. It is kept from the first step on. */
export async function openEmpty(): Promise<void> {
  const plan = newPlan('');
  say(null);
  await put({ plan, soFar: null, readOnly: null, claim: await claim(plan.id), port: await storage() });
}

/** What a reading leaves to be opened: the plan, and why it may not be changed. */
function opened(read: ReadPlan): { readonly plan: Plan | null; readonly readOnly: string | null } {
  if (read.kind === 'ok') return { plan: read.plan, readOnly: null };
  if (read.kind === 'newer') return { plan: read.plan, readOnly: read.sentence };
  if (read.kind === 'broken') return { plan: read.salvage, readOnly: null };
  return { plan: null, readOnly: null };
}

/** A job of this device; `taken` where it was taken over. False where nothing of it can be opened; the reason is said. */
export async function openStored(job: string, taken?: Claim): Promise<boolean> {
  const port = await storage();
  const here = desk.getState().session;
  if (here?.id === job) await here.close();
  const own = taken ?? (here?.id === job && holds?.mine ? holds : await claim(job));
  const { read, undo, redo, seq, whole, sentence } = await openJob<HistoryEntry>(port, job);
  const { plan, readOnly } = opened(read);
  const trouble = read.kind === 'ok' ? sentence : read.sentence;
  say(trouble === '' ? null : trouble);
  if (!plan) {
    letGo(own);
    return false;
  }
  await put({ plan, soFar: { seq, undo, redo, whole }, readOnly, claim: own, port });
  return true;
}

/** Takes a plan into the storage as a job and opens it. One that is there already is not written over. */
export async function openNew(plan: Plan): Promise<void> {
  const port = await storage();
  await createJob(port, plan, { savedAt: nowIso(), writer: WRITER });
  await openStored(plan.id);
}

/** A plan that may only be looked at: nothing of it is kept here. */
export async function openToLook(plan: Plan, readOnly: string): Promise<void> {
  const mine: Claim = { mine: true, release: () => {} };
  await put({ plan, soFar: null, readOnly, claim: mine, port: await storage() });
}

/** The job the address names, else the one saved last, else a fresh page. */
export async function openFirst(): Promise<void> {
  const port = await storage();
  const named = decodeURIComponent(location.hash.slice(1));
  const jobs = await port.jobs().catch(() => []);
  const latest = [...jobs].sort((a, b) => (a.savedAt < b.savedAt ? 1 : -1))[0];
  for (const job of [jobs.find((j) => j.id === named)?.id, latest?.id]) {
    if (job !== undefined && (await openStored(job))) return;
  }
  await openEmpty();
}
