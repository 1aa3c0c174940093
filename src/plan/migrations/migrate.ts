import { VERSION } from '../envelope.ts';

/** What a file holds before it is known to be sound. */
export type RawEnvelope = Readonly<Record<string, unknown>>;

/** One step from a version to the next. `up` returns a new envelope and leaves the given one as it is. */
export interface Migration {
  readonly from: number;
  /** What the step does, for the sentence that tells of it. */
  readonly what: string;
  readonly up: (envelope: RawEnvelope) => RawEnvelope;
}

/** A step that would lead past a version, or two for one, would change plans wrongly without a word: so it throws. */
export function inOrder(steps: readonly Migration[], to: number): readonly Migration[] {
  const sorted = [...steps].sort((a, b) => a.from - b.from);
  for (const [i, step] of sorted.entries()) {
    if (step.from !== i + 1) throw new Error(`migration ${i + 1} is wanted, ${step.from} stands there`);
  }
  if (sorted.length !== to - 1) throw new Error(`version ${to} needs ${to - 1} migrations, there are ${sorted.length}`);
  return sorted;
}

const found = import.meta.glob<Migration>('./*.migration.ts', { eager: true, import: 'default' });
export const migrations: readonly Migration[] = inOrder(Object.values(found), VERSION);

export type Migrated =
  | { readonly ok: true; readonly envelope: RawEnvelope; readonly done: readonly string[] }
  | { readonly ok: false; readonly why: string };

/**
 * Brings an envelope of an older version up to `to`. A step that fails leaves nothing half done: the envelope given is
 * never touched. A newer version is not for this to judge, so it comes back as it is.
 */
export function migrate(
  envelope: RawEnvelope,
  steps: readonly Migration[] = migrations,
  to: number = VERSION,
): Migrated {
  const version = envelope.version;
  if (typeof version !== 'number' || !Number.isInteger(version) || version < 1) {
    return { ok: false, why: 'its version is not a whole number from 1 up' };
  }
  let now = envelope;
  const done: string[] = [];
  for (const step of inOrder(steps, to).slice(version - 1)) {
    try {
      now = { ...step.up(structuredClone(now)), version: step.from + 1 };
    } catch {
      return { ok: false, why: `it could not be brought from version ${step.from} to ${step.from + 1} (${step.what})` };
    }
    done.push(step.what);
  }
  return { ok: true, envelope: now, done };
}
