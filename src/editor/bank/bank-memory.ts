import type { Xyz } from '../../plan/records/parts.ts';
import type { ToolContext } from '../tools/define-tool.ts';
import { emptyRunMemory, type RunMemory } from '../tools/live-run.ts';
import type { BankPlace } from './bank-place.ts';
import type { Standing } from './lay-again.ts';

/** What stood before a step, to be gone back to. */
export interface BankStep {
  readonly corners: readonly BankPlace[];
  readonly group: string | null;
  readonly last: Xyz | null;
}

/** What the tool for banks remembers between events. The place the next corner is told from lies in `start`. */
export interface BankMemory extends RunMemory {
  /** Appliance it starts at; null: in the open. */
  from: string | null;
  /** Corners told before there is a bank in the document. */
  corners: BankPlace[];
  group: string | null;
  steps: BankStep[];
  /** The bank as it was read from the plan that goes with it. */
  read: { readonly plan: object; readonly standing: Standing | null } | null;
  /** Ways to an appliance, worked out once for what is told. */
  shown: { readonly key: string; readonly plan: object; readonly preview: Preview } | null;
}

/** What would be laid: a line for each member, or why not. */
export interface Preview {
  readonly lines: readonly { readonly service: string; readonly pts: readonly Xyz[] }[];
  readonly middle: readonly Xyz[];
  readonly why: string | null;
}

export type BankContext = ToolContext<BankMemory>;

export const emptyBankMemory = (): BankMemory => ({
  ...emptyRunMemory(),
  from: null,
  corners: [],
  group: null,
  steps: [],
  read: null,
  shown: null,
});
