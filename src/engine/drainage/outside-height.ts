import { groundAt } from '../../geometry/ground.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';

/** Farther than this from where it was levelled, the ground may be anything. */
const NEAR_MM = constant('drain-judgement', 'ground levelled within', 'mm');

/** Height of an open end above the ground below it, mm: as told on its point, else from the levels; null where neither. */
export function aboveGround(given: Given, end: Point | null, at: Xyz | null): number | null {
  const told = end?.fields.aboveGroundMm;
  if (typeof told === 'number') return told;
  const ground = at ? groundAt(given.plan, at) : undefined;
  return at && ground && ground.awayMm <= NEAR_MM ? at.z - ground.z : null;
}
