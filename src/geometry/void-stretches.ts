import type { Plan } from '../plan/plan.ts';
import type { Void } from '../plan/records/building.ts';
import type { Xyz } from '../plan/records/parts.ts';
import { askBoxes, type BoxTree, boxTree, type IndexCounts } from './box-index.ts';
import { type Box3, boxOf } from './boxes.ts';
import { resolveHeight } from './heights.ts';
import { type JoistCrossing, joistsMet } from './joist-lines.ts';
import { between, clipToArea, insideArea, type Part, shared } from './outlines.ts';
import { rememberByRecords } from './remember.ts';
import type { Line3 } from './segments.ts';
import { distance3 } from './vec.ts';
import type { Standing } from './wall-frame.ts';

/** A part of a piece of pipe that runs inside a void. */
export interface VoidStretch {
  readonly void: string;
  /** Along the piece from its first end. */
  readonly fromMm: number;
  readonly toMm: number;
  readonly lengthMm: number;
  readonly joists: readonly JoistCrossing[];
}

/** Bottom and top of a void. `told` false: the record leaves one open and the storey's own figures stand in. */
export interface VoidHeights {
  readonly bottom: number;
  readonly top: number;
  readonly told: boolean;
}

/** What a storey says of a void that does not say itself: floors lie in the build-up, the rest between floor and ceiling. */
function storeyHeights(plan: Plan, space: Void): { bottom: number; top: number } | undefined {
  const storey = plan.storeys[space.storey];
  if (!storey || space.kind === 'slab') return undefined;
  if (space.kind === 'floor') return { bottom: storey.floorMm - storey.buildUpMm, top: storey.floorMm };
  return { bottom: storey.floorMm, top: storey.floorMm + storey.ceilingMm };
}

/**
 * Where a void is in height; undefined where nobody knows. A slab with no heights, and a ceiling void with no
 * underside, are not guessed: taking the whole room for a void would hide what shows.
 */
export function voidHeights(plan: Plan, space: Void): VoidHeights | undefined {
  const told = {
    bottom: space.bottom && resolveHeight(plan, space.bottom)?.z,
    top: space.top && resolveHeight(plan, space.top)?.z,
  };
  const storey = storeyHeights(plan, space);
  const bottom = told.bottom ?? (space.kind === 'ceiling' ? undefined : storey?.bottom);
  const top = told.top ?? storey?.top;
  if (bottom === undefined || bottom === null || top === undefined || top === null || bottom >= top) return undefined;
  return { bottom, top, told: typeof told.bottom === 'number' && typeof told.top === 'number' };
}

interface Placed {
  readonly space: Void;
  readonly box: Box3;
}
const FAR = Number.MAX_VALUE;

const voidTree = rememberByRecords((spaces: readonly Void[]): BoxTree<Placed> => {
  const flat = (space: Void): Box3 => ({ ...boxOf(space.outline.map((p) => ({ ...p, z: 0 }))), minZ: -FAR, maxZ: FAR });
  return boxTree(spaces.filter((s) => s.outline.length > 2).map((space) => ({ space, box: flat(space) })));
});

const standingVoids = (plan: Plan, standing?: Standing): Void[] =>
  Object.values(plan.voids).filter((v) => !standing || standing.has(v.id));

/** Looks for voids, for many pieces of one plan. */
export interface VoidFinder {
  /** Voids a straight piece runs in, part by part, with the joists it meets there; in order along it. */
  stretches(leg: Line3): VoidStretch[];
  /** The same without the joists. */
  spaces(leg: Line3): Omit<VoidStretch, 'joists'>[];
  readonly counts: IndexCounts;
}

export function voidFinder(plan: Plan, standing?: Standing): VoidFinder {
  const index = askBoxes(voidTree(standingVoids(plan, standing)));
  const known = new Map<Void, VoidHeights | undefined>();
  const heightsOf = (space: Void): VoidHeights | undefined => {
    if (!known.has(space)) known.set(space, voidHeights(plan, space));
    return known.get(space);
  };
  const within = (
    { a, b }: Line3,
    space: Void,
  ): { readonly in: Omit<VoidStretch, 'joists'>; readonly part: Part }[] => {
    const heights = heightsOf(space);
    const upright = heights && between(a.z, b.z, heights.bottom, heights.top);
    if (!upright) return [];
    const lengthMm = distance3(a, b);
    return clipToArea(a, b, space.outline, space.holes).flatMap((inPlan) => {
      const part = shared(inPlan, upright);
      if (!part || part[0] === part[1]) return [];
      const [fromMm, toMm] = [part[0] * lengthMm, part[1] * lengthMm];
      return [{ in: { void: space.id, fromMm, toMm, lengthMm: toMm - fromMm }, part }];
    });
  };
  const near = (leg: Line3) => index.search({ ...boxOf([leg.a, leg.b]), minZ: 0, maxZ: 0 });
  type Along = Pick<VoidStretch, 'void' | 'fromMm'>;
  const inOrder = (p: Along, q: Along): number => p.fromMm - q.fromMm || (p.void < q.void ? -1 : 1);
  return {
    counts: index.counts,
    stretches: (leg) =>
      near(leg)
        .flatMap(({ space }) =>
          within(leg, space).map((w) => ({ ...w.in, joists: joistsMet(plan, space, leg.a, leg.b, w.part) })),
        )
        .sort(inOrder),
    spaces: (leg) =>
      near(leg)
        .flatMap(({ space }) => within(leg, space).map((w) => w.in))
        .sort(inOrder),
  };
}

/** Of one piece; for many, make a `voidFinder` once. */
export const voidStretches = (plan: Plan, leg: Line3, standing?: Standing): VoidStretch[] =>
  voidFinder(plan, standing).stretches(leg);

/** Voids a place lies in, sorted by id. */
export function voidsAt(plan: Plan, p: Xyz, standing?: Standing): string[] {
  return standingVoids(plan, standing)
    .filter((space) => {
      const heights = voidHeights(plan, space);
      return heights && p.z >= heights.bottom && p.z <= heights.top && insideArea(p, space.outline, space.holes);
    })
    .map((space) => space.id)
    .sort();
}

/** Voids whose heights nobody knows: nothing can be told of what runs in them. Sorted by id. */
export function voidsWithoutHeight(plan: Plan, standing?: Standing): string[] {
  return standingVoids(plan, standing)
    .filter((space) => !voidHeights(plan, space))
    .map((space) => space.id)
    .sort();
}
