import { applyPatches, enablePatches, type Patch, produceWithPatches } from 'immer';
import * as v from 'valibot';
import type { Plan } from '../plan/plan.ts';
import { planSchema } from '../plan/plan.ts';
import type { AnyCommand, Command, CommandContext } from './commands/define-command.ts';
import { Refused } from './commands/define-command.ts';
import { quantiseRecord } from './quantise-record.ts';
import { sameValue } from './same-value.ts';

enablePatches();

/** What a command did. The patches replace whole records, so that a store can append them as they are. */
export interface Step {
  readonly plan: Plan;
  readonly label: string;
  readonly patches: readonly Patch[];
  readonly inverse: readonly Patch[];
  readonly made: readonly string[];
}

export interface Refusal {
  readonly refused: string;
}

export const isRefusal = (result: Step | Refusal): result is Refusal => 'refused' in result;

type Entries = Record<string, v.GenericSchema & { readonly value?: v.GenericSchema }>;
const entries = (planSchema as unknown as { entries: Entries }).entries;

/** Why a touched record may not stand in the document; undefined where it may. */
function fault(path: readonly [string, string | undefined], value: unknown): string | undefined {
  const [field, id] = path;
  const schema = id === undefined ? entries[field] : (entries[field]?.value ?? entries[field]);
  if (!schema || value === undefined) return undefined;
  const found = v.safeParse(schema, value);
  return found.success ? undefined : `${found.issues[0].message} (${v.getDotPath(found.issues[0]) ?? field})`;
}

type Maps = Record<string, unknown>;
const isMap = (field: string): boolean => entries[field]?.value !== undefined;

function touched(patches: readonly Patch[]): readonly (readonly [string, string | undefined])[] {
  const seen = new Map<string, readonly [string, string | undefined]>();
  for (const { path } of patches) {
    const field = String(path[0]);
    const id = isMap(field) && path[1] !== undefined ? String(path[1]) : undefined;
    seen.set(`${field}/${id ?? ''}`, [field, id]);
  }
  return [...seen.values()];
}

/** Writes the touched records, rounded, over the plan as it was; a record that comes out the same is left alone. */
function settle(before: Plan, after: Plan, paths: readonly (readonly [string, string | undefined])[]) {
  return produceWithPatches(before, (draft) => {
    const from = after as unknown as Maps;
    const to = draft as unknown as Maps;
    const old = before as unknown as Maps;
    for (const [field, id] of paths) {
      if (id === undefined) {
        const next = quantiseRecord(from[field]);
        if (!sameValue(next, old[field])) to[field] = next;
        continue;
      }
      const next = quantiseRecord((from[field] as Maps)[id]);
      const was = (old[field] as Maps)[id];
      if (next === undefined) {
        if (was !== undefined) delete (to[field] as Maps)[id];
      } else if (!sameValue(next, was)) (to[field] as Maps)[id] = next;
    }
  });
}

/** Runs a command on a plan. The plan itself is never written to; a step without patches changed nothing. */
export function runCommand(
  plan: Plan,
  command: AnyCommand,
  args: unknown,
  given: Omit<CommandContext, 'before'>,
): Step | Refusal {
  const kind = command as unknown as Command;
  const ctx: CommandContext = { ...given, before: plan };
  const read = v.safeParse(kind.args, args);
  if (!read.success) {
    const [issue] = read.issues;
    return { refused: `${kind.id}: ${issue.message} (${v.getDotPath(issue) ?? 'arguments'})` };
  }
  try {
    let made: readonly string[] = [];
    const [after, raw] = produceWithPatches(plan, (draft) => {
      made = kind.run(draft, read.output, ctx);
    });
    const paths = touched(raw);
    const [next, patches, inverse] = settle(plan, after, paths);
    for (const path of paths) {
      const map = (next as unknown as Maps)[path[0]];
      const wrong = fault(path, path[1] === undefined ? map : (map as Maps)[path[1]]);
      if (wrong !== undefined) return { refused: wrong };
    }
    return { plan: next, label: kind.label(read.output, plan), patches, inverse, made };
  } catch (cause) {
    if (cause instanceof Refused) return { refused: cause.message };
    throw cause;
  }
}

export const applySteps = (plan: Plan, patches: readonly unknown[]): Plan => applyPatches(plan, patches as Patch[]);
