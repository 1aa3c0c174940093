import type { Plan } from '../../plan/plan.ts';
import type { Box, Fragment } from '../display-list.ts';
import { union } from '../fragments/fragment.ts';

/** What is nearer to the edge of its window than this, mm of paper, is not whole. */
const NEAR_MM = 0.5;

/** What a sheet has to have room for, and the single things that lie far outside it. */
export interface Extent {
  readonly all: Box;
  /** The house and its pipes: what decides the scale. A door that opens outwards does not. */
  readonly house: Box;
}

const HOUSE: ReadonlySet<string> = new Set(['walls', 'rooms', 'voids', 'legs', 'stretches', 'items']);

/** A boundary or a neighbour's window may lie far from the house: it does not make the house smaller on paper. */
export function extentOf(fragments: readonly Fragment[]): Extent {
  const all = union(fragments.map((f) => f.box));
  const house = fragments.filter((f) => HOUSE.has(f.map));
  return { all, house: house.length > 0 ? union(house.map((f) => f.box)) : all };
}

const outside = (box: Box, window: Box, by: number): boolean =>
  box.minX < window.minX + by ||
  box.maxX > window.maxX - by ||
  box.minY < window.minY + by ||
  box.maxY > window.maxY - by;

/** Names of the points that no window shows whole. */
export function leftOut(plan: Plan, fragments: readonly Fragment[], windows: readonly Box[], scale: number): string[] {
  return fragments.flatMap(({ id, map, box }) => {
    if (map !== 'points' || windows.some((w) => !outside(box, w, NEAR_MM * scale))) return [];
    const point = plan.points[id];
    return point ? [point.name === '' ? point.kind.replaceAll('-', ' ') : point.name] : [];
  });
}
