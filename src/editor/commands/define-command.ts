import type * as v from 'valibot';
import type { IdMaker } from '../../plan/ids.ts';
import type { Case, Plan } from '../../plan/plan.ts';

/** What a command may lean on besides the plan and its arguments. */
export interface CommandContext {
  readonly ids: IdMaker;
  /** The plan as it stood before the command. */
  readonly before: Plan;
  readonly chosen: Case;
  /** Option of a new thing: null while the survey is drawn, since everything surveyed has none. */
  readonly option: string | null;
}

/** A source of choices for examples; the same seed gives the same choices. */
export interface Rng {
  /** Whole number from 0 to below `n`. */
  below(n: number): number;
  pick<T>(from: readonly T[]): T | undefined;
}

/**
 * One kind of change. `run` writes to the draft and gives the ids it made, or calls `refuse` and so changes nothing.
 * It must not keep the draft. Lengths are brought to tenths afterwards, in every record it touched.
 */
export interface Command<S extends v.GenericSchema = v.GenericSchema, A = v.InferOutput<S>> {
  readonly id: string;
  /** What the step of undo is called: "move boiler". Read from the plan as it was before. */
  readonly label: (args: A, before: Plan) => string;
  readonly args: S;
  readonly run: (draft: Plan, args: A, ctx: CommandContext) => readonly string[];
  /** Arguments that may fit the plan, null where nothing in it can be changed so. A refusal is allowed, a misfit not. */
  readonly example: (plan: Plan, rng: Rng) => object | null;
}

/** A registry holds commands of every kind of argument; the schema of each stands between it and the caller. */
export type AnyCommand = Command<v.GenericSchema, never>;

export const defineCommand = <S extends v.GenericSchema>(command: Command<S>): AnyCommand =>
  command as unknown as AnyCommand;

/** Thrown by `refuse` to leave a command; never reaches the caller of `Editor.run`. */
export class Refused extends Error {}

/** Leaves the command and undoes all that it wrote. `words` is shown: what stands in the way, and what to do. */
export function refuse(words: string): never {
  throw new Refused(words);
}
