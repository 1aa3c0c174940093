import { sub3 } from '../../geometry/vec.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { Refusal } from './changes.ts';
import { AXES, type AxisIndex, type Triple } from './frame.ts';
import type { Jog } from './jogs.ts';
import { type LegLaw, otherNode, type Pipework } from './law.ts';
import { sayRun } from './say.ts';
import type { Solved } from './solve.ts';

/** The pipework in its new places, before it is written as records. */
export interface Settled {
  /** New places by node: moved ones and added ones. */
  readonly places: ReadonlyMap<string, Xyz>;
  /** Touched legs with the nodes they now join; added ones too. */
  readonly legs: ReadonlyMap<string, Leg>;
  readonly addedLegs: readonly string[];
  /** Added nodes, each with the node it was made beside. */
  readonly addedNodes: ReadonlyMap<string, string>;
  /** Items that now sit along another leg. */
  readonly along: ReadonlyMap<string, string>;
}

/** Where a leg is parted: the end of its first half and the start of its second, in the middle between its new ends. */
function parting(pipes: Pipework, law: LegLaw, a: Triple, b: Triple): [Triple, Triple] {
  const { axis } = law;
  const half = (k: AxisIndex): number => (a[k] + b[k]) / 2;
  const onto = (t: Triple, z: number): Triple => [axis === 0 ? half(0) : t[0], axis === 1 ? half(1) : t[1], z];
  const aside = Math.hypot(
    ...AXES.filter((k) => k !== axis && (k !== 2 || law.fallMm === null)).map((k) => b[k] - a[k]),
  );
  const up = b[2] - a[2];
  if (axis === 2) {
    // A drop steps aside at 45, so that it still falls; anything else squarely.
    const step = law.downhill ? (Math.sign(up) * aside) / 2 : 0;
    if (law.downhill && Math.abs(up) < aside) {
      throw new Refusal(
        `${sayRun(pipes.plan, law.leg.run)} cannot follow: its drop is too short to step aside. Draw it anew.`,
      );
    }
    return [onto(a, half(2) - step), onto(b, half(2) + step)];
  }
  if (law.fallMm === null || axis === null) return [onto(a, a[2]), onto(b, b[2])];
  const along = Math.abs(b[axis] - a[axis]);
  const near = along / 2 / (along + aside);
  return [onto(a, a[2] + up * near), onto(b, b[2] - up * near)];
}

/** Everything that moves, put where it goes; legs that take a jog are parted in their middle. */
export function settle(pipes: Pipework, solved: Solved, ids: IdMaker): Settled {
  const { plan, at, axes } = pipes;
  const places = new Map<string, Xyz>();
  for (const [node, by] of solved.moved) {
    const place = pipes.place(node);
    const d = axes.house(by);
    if (place) places.set(node, { x: place.x + d.x, y: place.y + d.y, z: place.z + d.z });
  }
  const legs = new Map<string, Leg>();
  for (const node of places.keys()) for (const leg of at.legsAt(node)) legs.set(leg.id, leg);
  const addedLegs: string[] = [];
  const addedNodes = new Map<string, string>();
  const along = new Map<string, string>();
  const take = ({ law }: Jog): void => {
    const { leg } = law;
    const a = places.get(leg.a) ?? pipes.place(leg.a);
    const b = places.get(leg.b) ?? pipes.place(leg.b);
    if (!a || !b || law.axis === null) throw new Refusal('A leg that must be parted has no place.');
    const [one, other] = parting(pipes, law, axes.along(a), axes.along(b));
    const fresh = (prefix: string): string => {
      for (;;) {
        const id = ids.next(prefix);
        if (!(id in plan.nodes) && !(id in plan.legs)) return id;
      }
    };
    const [near, far] = [fresh('n'), fresh('n')];
    const [across, rest] = [fresh('l'), fresh('l')];
    places.set(near, axes.house(one)).set(far, axes.house(other));
    addedNodes.set(near, leg.a).set(far, leg.b);
    legs.set(leg.id, { ...leg, b: near });
    legs.set(across, { ...leg, id: across, a: near, b: far });
    legs.set(rest, { ...leg, id: rest, a: far, b: leg.b });
    addedLegs.push(across, rest);
    for (const item of at.itemsAt(leg.b)) if (item.along === leg.id) along.set(item.id, rest);
  };
  for (const jog of solved.jogs) take(jog);
  return { places, legs, addedLegs, addedNodes, along };
}

/** Where a node now is. */
export const placeNow = (pipes: Pipework, settled: Settled, node: string): Xyz | undefined =>
  settled.places.get(node) ?? pipes.place(node);

export function wayNow(pipes: Pipework, settled: Settled, leg: Leg, from: string): Xyz | undefined {
  const a = placeNow(pipes, settled, from);
  const b = placeNow(pipes, settled, otherNode(leg, from));
  return a && b && sub3(b, a);
}
