import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Fragment } from '../display-list.ts';
import { fallFragment } from '../fragments/fall.fragment.ts';
import { itemFragment } from '../fragments/item.fragment.ts';
import { itemsByNode } from '../fragments/item-fragments.ts';
import { cornerMost, jointFragment } from '../fragments/joint.fragment.ts';
import { legFragment } from '../fragments/leg.fragment.ts';
import { remember } from '../memo/remember.ts';
import { crossings } from '../pipes/crossings.ts';
import { type DrawnLeg, drawnLegNow } from '../pipes/drawn-leg.ts';
import { type Joint, jointOf } from '../pipes/joints.ts';
import { meeting, type PipesInView, stateOf } from '../pipes/pipes-in-view.ts';
import type { IsoPlane } from './iso-plane.ts';
import type { Pipe } from './iso-scope.ts';

/** Pipes as they lie in the drawing, the furthest first, so that what is nearer is painted over it. */
export function isoLegs(plan: Plan, alive: Alive, pipes: readonly Pipe[], plane: IsoPlane): DrawnLeg[] {
  const legs = pipes.flatMap(({ map, record }) => {
    const state = stateOf(alive, map, record.id, false);
    if (!state) return [];
    const key = `iso:${plane.quarter}`;
    const drawn = remember(record, key, plan, [state, plane.houseDeg], (p) =>
      drawnLegNow(p, map, record, state, plane),
    );
    return drawn ?? [];
  });
  const near = (l: DrawnLeg): number => l.readerA + l.readerB;
  const seen = (l: DrawnLeg): number => Number(l.map === 'legs');
  return legs.sort((p, q) => seen(p) - seen(q) || near(p) - near(q));
}

export interface IsoPipes extends PipesInView {
  readonly fragments: readonly Fragment[];
  /** Vertices at which something stands in line. */
  readonly filled: ReadonlySet<string>;
  readonly items: readonly { readonly id: string; readonly at: DrawnLeg['a'] }[];
}

/** Something that leads straight at the reader is a dot ringed, as in plan. */
function endOnFragment(leg: DrawnLeg): Fragment {
  const mark = leg.readerB > leg.readerA ? 'rise' : 'drop';
  return {
    ...legFragment(leg, { spread: [undefined, undefined], trim: [0, 0], gaps: [], wishes: [] }),
    items: [{ t: 'mark', mark, at: leg.a, turnDeg: 0, ink: leg.style.ink }],
    wishes: [],
  };
}

function lineFragments(
  leg: DrawnLeg,
  joints: ReadonlyMap<string, Joint>,
  behind: ReturnType<typeof crossings>,
): Fragment[] {
  if (leg.endOn) return [endOnFragment(leg)];
  const trimAt = (vertex: string): number => {
    const joint = joints.get(vertex);
    const other = joint?.is === 'corner' ? joint.flat.find((l) => l !== leg) : undefined;
    return other ? cornerMost(leg, other) : 0;
  };
  const gaps = (behind.get(leg) ?? []).map(({ at }) => ({ at }));
  const trim = [trimAt(leg.vertexA), trimAt(leg.vertexB)] as const;
  const fall = fallFragment(leg, undefined);
  return [legFragment(leg, { spread: [undefined, undefined], trim, gaps, wishes: [] }), ...(fall ? [fall] : [])];
}

/** Lines, the places where they meet and what stands in them. */
export function isoPipes(plan: Plan, alive: Alive, legs: readonly DrawnLeg[]): IsoPipes {
  const { at } = meeting(legs);
  const joints = new Map([...at].map(([vertex, there]) => [vertex, jointOf(vertex, there)] as const));
  const behind = crossings(legs);
  const fragments = legs.flatMap((leg) => lineFragments(leg, joints, behind));
  const inLine = itemsByNode(plan);
  const filled = new Set<string>();
  const items: { id: string; at: DrawnLeg['a'] }[] = [];
  const done = new Set<string>();
  for (const leg of legs) {
    for (const [id, vertex, place] of [
      [leg.record.a, leg.vertexA, leg.a],
      [leg.record.b, leg.vertexB, leg.b],
    ] as const) {
      const node = plan.nodes[id];
      if (!node || done.has(id)) continue;
      done.add(id);
      const joint = joints.get(vertex);
      const free = node.place.on === 'storey';
      const marked = joint && joint.is !== 'none' && joint.is !== 'straight' && (joint.is !== 'end' || free);
      const made = marked && !done.has(`at ${vertex}`) ? jointFragment(id, vertex, joint, undefined) : undefined;
      done.add(`at ${vertex}`);
      if (made) fragments.push(made);
      for (const item of inLine.get(id) ?? []) {
        if (stateOf(alive, 'items', item.id, false) === null) continue;
        const own = at.get(vertex)?.find((l) => l.record.id === item.along) ?? leg;
        fragments.push(itemFragment(item, vertex, own, undefined));
        filled.add(vertex);
        items.push({ id: item.id, at: place });
      }
    }
  }
  return { legs, at, fragments, filled, items };
}
