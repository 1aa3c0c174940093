import type { HistoryEntry } from '../../editor/editor-api.ts';
import { writePlan } from '../../files/format/write-plan.ts';
import { createJob, listJobs, openJob } from '../../files/store/open-job.ts';
import type { JobRow, Snapshot } from '../../files/store/store-port.ts';
import type { Plan } from '../../plan/plan.ts';
import { desk, openEmpty, openStored } from '../app/desk.ts';
import { deviceIds } from '../app/ids.ts';
import { nowIso, storage, WRITER } from '../app/storage.ts';

export async function jobsHere(): Promise<readonly JobRow[]> {
  return listJobs(await storage());
}

/** The plan of a job as it was left, with the steps back and forth; null where it cannot be read. */
async function readJob(id: string): Promise<{ readonly plan: Plan; readonly snapshot: Snapshot } | null> {
  const open = desk.getState().session;
  if (open?.id === id) await open.flush();
  const { read, undo, redo, seq } = await openJob<HistoryEntry>(await storage(), id);
  if (read.kind !== 'ok') return null;
  const text = writePlan(read.plan, { savedAt: nowIso(), writer: WRITER, blobs: read.blobs });
  return { plan: read.plan, snapshot: { job: id, seq: seq + 1, text, undo, redo } };
}

/** Another job that starts as this one is now. Gives whether it could be read. */
export async function duplicateJob(id: string): Promise<boolean> {
  const found = await readJob(id);
  if (!found) return false;
  const plan = { ...found.plan, id: deviceIds.next('plan'), name: `${found.plan.name} copy`.trim() };
  await createJob(await storage(), plan, { savedAt: nowIso(), writer: WRITER });
  return true;
}

/** Takes a job away; gives back how to bring it back, steps and all. */
export async function deleteJob(row: JobRow): Promise<() => Promise<void>> {
  const port = await storage();
  const found = await readJob(row.id);
  const open = desk.getState().session?.id === row.id;
  if (open) await openEmpty();
  await port.remove(row.id);
  return async () => {
    if (!found) return;
    await port.writeSnapshot({ ...row, savedAt: nowIso() }, found.snapshot);
    if (open) await openStored(row.id);
  };
}

/** "today 10:12", "3 May 2026". */
export function sayWhen(iso: string, now: Date): string {
  const at = new Date(iso);
  if (Number.isNaN(at.getTime())) return '';
  const clock = `${String(at.getHours()).padStart(2, '0')}:${String(at.getMinutes()).padStart(2, '0')}`;
  if (at.toDateString() === now.toDateString()) return `today ${clock}`;
  return at.toLocaleDateString('en-GB', { day: 'numeric', month: 'long', year: 'numeric' });
}
