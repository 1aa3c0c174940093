import type { Vec } from '../../drawing/display-list.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Entry } from '../hit/pipework-entries.ts';
import type { Target } from '../input/pick.ts';
import type { WorkPlane } from '../input/work-plane.ts';

/** What a tool wants of the snaps at this moment. */
export interface SnapOptions {
  /** Place of the last node or corner: right angles and lengths start here. */
  readonly from?: Xyz;
  /** Unit way of the last leg or of the frame in the plane of the view. */
  readonly way?: Vec;
  /** Earlier nodes, to line up with. */
  readonly earlier?: readonly Xyz[];
  /** Only connections and legs of this service are caught. */
  readonly service?: string;
  /** Ids of snaps to use; all where not told. */
  readonly only?: readonly string[];
  /** Height or stand-off in place of the one in hand. */
  readonly depth?: number;
  /** Records that are being moved catch nothing. */
  readonly without?: ReadonlySet<string>;
}

export interface SnapContext extends Omit<SnapOptions, 'depth'> {
  readonly plan: Plan;
  readonly plane: WorkPlane;
  /** The pointer in the plane of the view, mm. */
  readonly at: Vec;
  readonly toleranceMm: number;
  /** z in hand in plan, stand-off in hand on a face. */
  readonly depth: number;
  /** Standing records about the pointer. */
  readonly near: readonly Entry[];
}

/** A place that is caught, or a line along which the pick slides. */
export type Catch =
  | { readonly is: 'place'; readonly at: Vec; readonly xyz?: Xyz; readonly target?: Target; readonly word: string }
  | { readonly is: 'line'; readonly at: Vec; readonly way: Vec; readonly target?: Target; readonly word: string };

export interface Snap {
  readonly id: string;
  /** Lower goes first, whatever the distance. */
  readonly priority: number;
  /** Found only where a tool asks for it by its id. */
  readonly whenAsked?: true;
  readonly find: (ctx: SnapContext) => readonly Catch[];
}

export const defineSnap = (snap: Snap): Snap => snap;
