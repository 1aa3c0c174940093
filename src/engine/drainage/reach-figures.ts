import { constant } from '../../reference/figure.ts';

const TABLE = 'reach-ways';

/** Judgement of how a way is sought, mm unless told otherwise. */
export const OFF_WALL_MM = constant(TABLE, 'off the wall', 'mm');
/** A pipe further from a wall than this has to be in the ground or under the floor. */
export const FREE_MM = constant(TABLE, 'free of the wall', 'mm');
export const UNDER_TAIL_MM = constant(TABLE, 'under the tail', 'mm');
export const CLEAR_MM = constant(TABLE, 'clear of an opening', 'mm');
export const HOLE_MM = constant(TABLE, 'hole', 'mm');
export const IN_THE_WAY_MM = constant(TABLE, 'opening in the way', 'mm');
/** Times. */
export const AGAINST = constant(TABLE, 'against the wish', 'times');
/** Counts. */
export const MOST_ENDS = constant(TABLE, 'ends looked at', 'times');
export const FURTHEST_MM = constant(TABLE, 'furthest end', 'mm');
export const MOST_JOISTS = constant(TABLE, 'joists that may be holed', 'times');
/** A pipe further from its wall is clear of what opens in it. */
export const ON_FACE_MM = constant('nearness', 'on the wall');
