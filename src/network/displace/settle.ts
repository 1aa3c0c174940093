import { sub3 } from '../../geometry/vec.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { Refusal } from './changes.ts';
import { otherNode, type Pipework } from './law.ts';
import type { Jog, Solved } from './solve.ts';

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
    const [u, w] = [axes.along(a), axes.along(b)];
    const middle = (u[law.axis] + w[law.axis]) / 2;
    const onto = (t: typeof u): Xyz =>
      axes.house([law.axis === 0 ? middle : t[0], law.axis === 1 ? middle : t[1], law.axis === 2 ? middle : t[2]]);
    const fresh = (prefix: string): string => {
      for (;;) {
        const id = ids.next(prefix);
        if (!(id in plan.nodes) && !(id in plan.legs)) return id;
      }
    };
    const [near, far] = [fresh('n'), fresh('n')];
    const [across, rest] = [fresh('l'), fresh('l')];
    places.set(near, onto(u)).set(far, onto(w));
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
