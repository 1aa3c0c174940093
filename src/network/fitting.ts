import type { Tube } from '../plan/records/pipework.ts';

/** Change of size (reducer) or of kind (transition) between the two ways of a fitting. */
export interface Change {
  readonly is: 'reducer' | 'transition';
  readonly from: Tube;
  readonly to: Tube;
  /** The edge on the side of `to`. */
  readonly edge: string;
}

export type TeeForm = 'equal' | 'reducedBranch' | 'reducedEnd' | 'endAndBranchReduced' | 'pendant';

interface At {
  readonly vertex: string;
  /** Edges that meet in it, sorted by id. */
  readonly edges: readonly string[];
}

/** The same tube carries on: nothing is bought, both legs print as one. */
export type Plain = At & { readonly is: 'plain' };
/** New pipe carries on from pipe that was there. */
export type Coupling = At & { readonly is: 'coupling'; readonly tube: Tube };
/** A made elbow, in the larger of its two tubes where they differ; then `change` sits in its socket. */
export type Elbow = At & {
  readonly is: 'elbow';
  readonly degrees: 45 | 90;
  readonly turnDeg: number;
  readonly tube: Tube;
  readonly change: Change | null;
};
/** A bend pulled in the tube itself. `degrees` is the class its allowance is read in, never less than it turns. */
export type Bend = At & {
  readonly is: 'bend';
  readonly degrees: 45 | 90;
  readonly turnDeg: number;
  readonly tube: Tube;
};
export type Straight = At & { readonly is: 'reducer' | 'transition'; readonly change: Change };
/**
 * Ends in line, branch aside. `sizes` in trade order: largest end, other end, branch. `seen` false where unseen pipe
 * meets here, so which ways are in line is taken from the runs and not from the drawing; `guessed` where not even they tell.
 */
export type Tee = At & {
  readonly is: 'tee';
  readonly ends: readonly [string, string];
  readonly branch: string;
  readonly degrees: 45 | 90;
  readonly sizes: readonly [Tube, Tube, Tube];
  readonly form: TeeForm;
  /** "tee 22 x 15 x 22, ends 22 and 15, branch 22 (reduced end)". */
  readonly words: string;
  readonly changes: readonly Change[];
  readonly seen: boolean;
  readonly guessed: boolean;
};
/** Pipe meets an appliance or other point; `degrees` is the turn between the connection's facing and the pipe. */
export type Joint = At & {
  readonly is: 'joint';
  readonly point: string;
  readonly connection: string;
  readonly tube: Tube;
  /** As the connection's own record gives it. */
  readonly size: string | null;
  readonly degrees: 0 | 45 | 90;
  readonly turnDeg: number;
};
export type OpenEnd = At & { readonly is: 'open'; readonly tube: Tube };
export type Cap = At & { readonly is: 'cap'; readonly tube: Tube };
/** No made fitting stands for it; `why` is a sentence for the screen. */
export type Unresolved = At & {
  readonly is: 'unresolved';
  readonly reason: 'angle' | 'cross' | 'ways' | 'corner' | 'connection' | 'place';
  readonly why: string;
};
/** A place no pipe reaches. */
export type Lone = At & { readonly is: 'none' };

export type Fitting = Plain | Coupling | Elbow | Bend | Straight | Tee | Joint | OpenEnd | Cap | Unresolved | Lone;
