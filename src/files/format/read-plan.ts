import { FORMAT, MINOR, VERSION } from '../../plan/envelope.ts';
import { migrate } from '../../plan/migrations/migrate.ts';
import type { Plan } from '../../plan/plan.ts';
import { checkPlan, isObject, type RawObject } from './check-plan.ts';
import { scanJson } from './json-scan.ts';
import { lineAndColumn } from './json-tokens.ts';
import { type Problem, sayProblems } from './plan-problem.ts';
import { type Salvage, salvagePlan } from './salvage-plan.ts';

export type Blobs = Readonly<Record<string, string>>;

export type ReadPlan =
  /** `fromNewer`: written by a Kickset that knows more; what it added is kept and stays as it is. */
  | {
      readonly kind: 'ok';
      readonly plan: Plan;
      readonly blobs: Blobs;
      readonly fromNewer: boolean;
      readonly sentence: string;
    }
  /** To look at only: this Kickset would write it wrongly. `plan` null: it cannot even be drawn. */
  | { readonly kind: 'newer'; readonly plan: Plan | null; readonly blobs: Blobs; readonly sentence: string }
  | {
      readonly kind: 'broken';
      readonly problems: readonly Problem[];
      readonly sentence: string;
      /** What could be read, sound in itself; null where that is nothing. */
      readonly salvage: Plan | null;
      readonly dropped: readonly Problem[];
      readonly blobs: Blobs;
    }
  | { readonly kind: 'notPlan'; readonly sentence: string };

/** Photos travel inside the file; past this a tablet runs out of memory before it has read it. */
export const MOST_BYTES = 256 * 1024 * 1024;
/** A plan is some eight levels deep; a file far deeper was made to break its reader. */
export const MOST_DEPTH = 64;

const UNTOUCHED = 'The file itself is left as it is.';

function soundBlobs(value: unknown): Blobs {
  const sound: Record<string, string> = {};
  if (!isObject(value)) return sound;
  for (const [hash, data] of Object.entries(value))
    if (hash !== '__proto__' && typeof data === 'string') sound[hash] = data;
  return sound;
}

function broken(problems: readonly Problem[], raw: unknown, blobs: unknown, lead: string): ReadPlan {
  const saved: Salvage | null = salvagePlan(raw);
  const offer =
    saved === null
      ? 'Nothing in it could be read.'
      : saved.dropped.length === 0
        ? 'All that was read is offered as a copy.'
        : `What could be read is offered as a copy, without: ${sayProblems(saved.dropped, 4)}.`;
  const { plan: salvage, dropped } = saved ?? { plan: null, dropped: [] };
  const sentence = `${lead} ${offer} ${UNTOUCHED}`;
  return { kind: 'broken', problems, sentence, salvage, dropped, blobs: soundBlobs(blobs) };
}

function newer(envelope: RawObject, damage: string): ReadPlan {
  const raw = envelope.plan;
  const sound = isObject(raw) && checkPlan(raw).length === 0;
  const plan = sound ? (raw as unknown as Plan) : (salvagePlan(raw)?.plan ?? null);
  const by = typeof envelope.writer === 'string' && envelope.writer !== '' ? ` by ${envelope.writer.slice(0, 80)}` : '';
  const saved = `This job was saved${by} in version ${String(envelope.version)} of the format`;
  const seen = plan === null ? 'It cannot be shown here.' : 'It is open to look at only, and may lack what is new.';
  const sentence = `${saved}; this Kickset knows version ${VERSION}.${damage} ${seen} ${UNTOUCHED}`;
  return { kind: 'newer', plan, blobs: soundBlobs(envelope.blobs), sentence };
}

function readEnvelope(raw: RawObject, repeated: readonly string[]): ReadPlan {
  const migrated = migrate(raw);
  if (!migrated.ok) {
    const problem: Problem = { map: 'file', id: '', field: 'version', why: migrated.why };
    return broken([problem], raw.plan, raw.blobs, `This job cannot be opened as it is: ${migrated.why}.`);
  }
  const { plan, blobs, minor } = migrated.envelope;
  const problems: Problem[] = repeated.map((name) => ({
    map: 'file',
    id: '',
    field: name.slice(0, 60),
    why: 'stands twice',
  }));
  if (!isObject(plan)) problems.push({ map: 'file', id: '', field: 'plan', why: 'is missing' });
  else problems.push(...checkPlan(plan));
  const lost = isObject(blobs) ? Object.entries(blobs).filter(([, data]) => typeof data !== 'string') : [];
  for (const [id] of lost) problems.push({ map: 'blobs', id, field: '', why: 'is not text' });
  if (problems.length > 0) {
    const count = problems.length === 1 ? 'One thing' : `${problems.length} things`;
    return broken(problems, plan, blobs, `${count} in this job cannot be read: ${sayProblems(problems)}.`);
  }
  const fromNewer = typeof minor === 'number' && minor > MINOR;
  const sentence = fromNewer ? 'Saved by a newer Kickset. What it added is kept, though not shown here.' : '';
  return { kind: 'ok', plan: plan as unknown as Plan, blobs: soundBlobs(blobs), fromNewer, sentence };
}

/** A text that breaks somewhere: what stands before the break is read as far as it goes. */
function readDamaged(text: string, fault: { at: number; why: string }, raw: RawObject | null): ReadPlan {
  const { line, column } = lineAndColumn(text, fault.at);
  const where = `line ${line}, column ${column}`;
  const why = `${fault.why} (${where})`;
  if (raw === null) return { kind: 'notPlan', sentence: `This file cannot be read as a job: ${why}.` };
  if (isNewer(raw)) return newer(raw, ` It is damaged besides: ${why}.`);
  const migrated = migrate(raw);
  const { plan, blobs } = migrated.ok ? migrated.envelope : raw;
  const problem: Problem = { map: 'file', id: '', field: where, why: fault.why };
  return broken([problem], plan, blobs, `This file is damaged: ${why}.`);
}

const isNewer = (raw: RawObject): boolean => Number.isInteger(raw.version) && Number(raw.version) > VERSION;

/** The envelope, where the text holds one of ours. */
function envelopeIn(json: string): RawObject | null {
  try {
    const raw: unknown = JSON.parse(json);
    return isObject(raw) && Object.hasOwn(raw, 'format') && raw.format === FORMAT ? raw : null;
  } catch {
    return null;
  }
}

/**
 * Reads the text of a plan file. Never throws and never changes what is sound: a plan that is `ok` is the very object
 * the text holds, unknown fields and order of names included. Every other answer says in a sentence what is the matter.
 */
export function readPlan(given: string): ReadPlan {
  const text = given.startsWith('\ufeff') ? given.slice(1) : given;
  if (text.length > MOST_BYTES) {
    const megabytes = Math.round(text.length / 1024 / 1024);
    return { kind: 'notPlan', sentence: `This file is too large for a job: ${megabytes} MB.` };
  }
  const scan = scanJson(text);
  if (scan.depth > MOST_DEPTH) {
    return {
      kind: 'notPlan',
      sentence: `This file is nested ${scan.depth} levels deep, as no job is. It was not read.`,
    };
  }
  if (scan.fault !== null) return readDamaged(text, scan.fault, envelopeIn(scan.whole));
  const raw = envelopeIn(text);
  if (raw === null) return { kind: 'notPlan', sentence: 'This file is not a Kickset job.' };
  return isNewer(raw) ? newer(raw, '') : readEnvelope(raw, scan.repeated);
}
