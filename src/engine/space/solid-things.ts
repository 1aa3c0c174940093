import { pointKinds } from '../../catalogue/point-kinds.ts';
import { type BoxTree, boxTree } from '../../geometry/box-index.ts';
import { type Box3, flatBox } from '../../geometry/boxes.ts';
import { type PointBox, pointBox } from '../../geometry/point-box.ts';
import type { Roof, Void } from '../../plan/records/building.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';

/** Kinds with a body that stays where it is; of the rest most are marks, areas, or pipework of the boiler's own. */
const SOLID = new Set(['beam', 'obstacle', 'soil-stack', 'standpipe', 'radiator', 'stairs', 'bath']);
const SOLID_GROUPS = new Set(['appliance', 'source', 'tap', 'electrical']);
const MARKS = new Set(['cable-route', 'bonding-clamp', 'condensate-pump']);
const isSolid = (kind: string): boolean =>
  SOLID.has(kind) || (SOLID_GROUPS.has(pointKinds.get(kind)?.group ?? '') && !MARKS.has(kind));

export interface SolidPoint {
  readonly point: Point;
  readonly body: PointBox;
  readonly box: Box3;
}

interface BoxedVoid {
  readonly space: Void;
  readonly box: Box3;
}

interface BoxedRoof {
  readonly roof: Roof;
  readonly box: Box3;
}

interface Solid {
  readonly points: ReadonlyMap<string, BoxTree<SolidPoint>>;
  readonly boxings: ReadonlyMap<string, BoxTree<BoxedVoid>>;
  readonly roofs: ReadonlyMap<string, BoxTree<BoxedRoof>>;
}

function byStorey<T extends { readonly box: Box3 }>(rows: readonly (readonly [string, T])[]): Map<string, BoxTree<T>> {
  const found = new Map<string, T[]>();
  for (const [storey, entry] of rows) {
    const row = found.get(storey);
    if (row) row.push(entry);
    else found.set(storey, [entry]);
  }
  return new Map([...found].map(([storey, row]) => [storey, boxTree(row)]));
}

const solids = new WeakMap<Given, Solid>();

function solidOf(given: Given): Solid {
  const kept = solids.get(given);
  if (kept) return kept;
  const { plan, network } = given;
  const points = Object.values(plan.points).flatMap((point): [string, SolidPoint][] => {
    if (!isSolid(point.kind) || !network.alive.has('points', point.id)) return [];
    const body = pointBox(plan, point);
    return body ? [[point.storey, { point, body, box: body.box }]] : [];
  });
  const boxings = Object.values(plan.voids).flatMap((space): [string, BoxedVoid][] =>
    space.kind === 'boxing' && network.alive.has('voids', space.id)
      ? [[space.storey, { space, box: flatBox(space.outline, 0) }]]
      : [],
  );
  const roofs = Object.values(plan.roofs).map((roof): [string, BoxedRoof] => [
    roof.storey,
    { roof, box: flatBox(roof.outline, 0) },
  ]);
  const made = { points: byStorey(points), boxings: byStorey(boxings), roofs: byStorey(roofs) };
  solids.set(given, made);
  return made;
}

/** What of a tree comes into a box as seen from above, in the order of the plan. */
function within<T extends { readonly box: Box3 }>(tree: BoxTree<T> | undefined, box: Box3): T[] {
  const near = tree?.near(box) ?? [];
  return [...near].sort((a, b) => a.order - b.order).map(({ entry }) => entry);
}

/** Standing points of a storey with a body that stays, where they come into a box as seen from above. */
export const solidPointsIn = (given: Given, storey: string, box: Box3): SolidPoint[] =>
  within(solidOf(given).points.get(storey), box);

/** Standing boxes round pipes of a storey, likewise. */
export const boxingsIn = (given: Given, storey: string, box: Box3): Void[] =>
  within(solidOf(given).boxings.get(storey), box).map(({ space }) => space);

/** Roofs of a storey, likewise. */
export const roofsIn = (given: Given, storey: string, box: Box3): Roof[] =>
  within(solidOf(given).roofs.get(storey), box).map(({ roof }) => roof);
