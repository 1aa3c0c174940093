import type { PointBox } from '../../geometry/point-box.ts';
import type { Xyz } from '../../plan/records/parts.ts';

/** Where a member of a bank ends at an appliance. */
export interface Tail {
  readonly at: Xyz;
  /** Unit way the pipe leaves along. */
  readonly facing: Xyz;
  /** The appliance it belongs to: pipes keep out of it. */
  readonly body: PointBox | null;
}

/**
 * What is past the parallel part on one side, from there outwards, and stays as it is told: it follows a step aside of
 * its first corner as far as its legs take that up. `holds` says of each place whether something keeps it where it is.
 */
export interface Rest {
  /** Place of its corner of the parallel part. */
  readonly at: Xyz;
  readonly pts: readonly Xyz[];
  readonly holds: readonly boolean[];
}

export type BankEnd =
  | { readonly is: 'open' }
  | { readonly is: 'tail'; readonly tail: Tail; readonly now?: Rest }
  | { readonly is: 'rest'; readonly rest: Rest };

export interface BankMember {
  /** As it is said in a sentence: "the hot run". */
  readonly name: string;
  readonly radiusMm: number;
  readonly start: BankEnd;
  readonly end: BankEnd;
}

/** A bank to be laid: the middle path, and each member's place across it on the first leg. */
export interface BankTask {
  readonly members: readonly BankMember[];
  readonly spacingMm: number;
  readonly path: readonly Xyz[];
  /** Of each member, from the middle of the first leg. */
  readonly across: readonly Xyz[];
}

/** What a place of a laid member leans on for its height: a corner of the path, or the tail of that side. */
export type Lean = { readonly corner: number } | { readonly tail: 'start' | 'end' };

export interface LaidPlace {
  readonly at: Xyz;
  readonly lean: Lean;
}

export interface LaidMember {
  /** Outermost first; the tail itself among them. Empty where the side is open. */
  readonly start: readonly LaidPlace[];
  /** Corners of the parallel part that are the member's own: all of the path, less the ends that go on to a tail. */
  readonly middle: readonly LaidPlace[];
  readonly end: readonly LaidPlace[];
}

export interface LaidBank {
  readonly members: readonly LaidMember[];
  readonly cost: number;
}

export type Laid =
  | { readonly ok: true; readonly bank: LaidBank }
  | { readonly ok: false; readonly why: string; readonly pair: readonly [number, number] | null };

export const placesOfMember = (m: LaidMember): Xyz[] => [...m.start, ...m.middle, ...m.end].map((p) => p.at);
