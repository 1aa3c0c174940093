import { lengthBetween } from '../../geometry/places.ts';
import type { Alive } from '../../network/cases.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { Box, Fragment } from '../display-list.ts';
import { makeFragment, union } from '../fragments/fragment.ts';
import { livesOf } from '../fragments.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { stateOf } from '../pipes/pipes-in-view.ts';
import { houseTurn } from './house-turn.ts';
import { isoChains } from './iso-chains.ts';
import { type IsoLevel, isoLevels } from './iso-levels.ts';
import { type IsoPipes, isoLegs, isoPipes } from './iso-pipes.ts';
import { type IsoPlane, isoPlane, type Quarter } from './iso-plane.ts';
import { isoPoint } from './iso-points.ts';
import { isoRooms } from './iso-rooms.ts';
import { type IsoScope, pipesOf, scopeKey } from './iso-scope.ts';
import type { IsoLength } from './place-length.ts';

/** An isometric as it is at every scale: lines in mm of its plane, and what there is to be told of them. */
export interface IsoDrawing {
  readonly plane: IsoPlane;
  readonly fragments: readonly Fragment[];
  /** Floors of the rooms that pipes run through. */
  readonly rooms: readonly Fragment[];
  readonly legs: readonly DrawnLeg[];
  readonly at: IsoPipes['at'];
  readonly items: IsoPipes['items'];
  readonly lengths: readonly IsoLength[];
  readonly levels: readonly IsoLevel[];
  readonly box: Box;
}

const UNSURE_MM = 0.5;

/** Axes of the house: of its walls where it has any, else of its pipes. */
function turnOfHouse(plan: Plan, alive: Alive): number {
  const walls = Object.values(plan.walls).filter((w) => alive.has('walls', w.id));
  if (walls.length > 0) return houseTurn(walls.map((w) => [w.a, w.b] as const));
  const pipes = Object.values(plan.legs).flatMap((leg) => {
    const [a, b] = [plan.nodes[leg.a], plan.nodes[leg.b]];
    return a?.place.on === 'storey' && b?.place.on === 'storey' ? [[a.place, b.place] as const] : [];
  });
  return houseTurn(pipes);
}

function lengthsOf(plan: Plan, pipes: IsoPipes, plane: IsoPlane): IsoLength[] {
  return isoChains(pipes.legs, pipes.at, pipes.filled).flatMap((chain): IsoLength[] => {
    const [first] = chain.legs;
    if (!first || chain.mm < 1) return [];
    const unsure = chain.legs.some(({ record }) => {
      const [a, b] = [plan.nodes[record.a], plan.nodes[record.b]];
      const found = a && b && lengthBetween(plan, a, b);
      return ('sureness' in record && record.sureness === 'assumed') || (!!found && found.hi - found.lo > UNSURE_MM);
    });
    return [
      {
        id: first.record.id,
        of: new Set(chain.legs.map((l) => l.record.id)),
        a: plane.at(chain.from),
        b: plane.at(chain.to),
        text: Math.round(chain.mm).toString(),
        unsure,
      },
    ];
  });
}

/** Points that pipes of the drawing end at, the furthest first. */
function pointsOf(plan: Plan, alive: Alive, legs: readonly DrawnLeg[], plane: IsoPlane): Fragment[] {
  const ids = new Map<string, number>();
  for (const leg of legs) {
    for (const [id, near] of [
      [leg.record.a, leg.readerA],
      [leg.record.b, leg.readerB],
    ] as const) {
      const place = plan.nodes[id]?.place;
      if (place?.on === 'connection') ids.set(place.point, near);
    }
  }
  return [...ids]
    .sort(([, p], [, q]) => p - q)
    .flatMap(([id]) => {
      const point = plan.points[id];
      const state = point && stateOf(alive, 'points', id, false);
      return (point && state && isoPoint(plan, point, state, plane)) || [];
    });
}

function draw(plan: Plan, chosen: Case, scope: IsoScope, quarter: Quarter): IsoDrawing {
  const alive = livesOf(plan, chosen);
  const plane = isoPlane(quarter, turnOfHouse(plan, alive));
  const legs = isoLegs(plan, alive, pipesOf(plan, alive, scope), plane);
  const pipes = isoPipes(plan, alive, legs);
  const points = pointsOf(plan, alive, legs, plane);
  const rooms = isoRooms(
    plan,
    alive,
    legs.map((l) => ({ a: l.placeA.at, b: l.placeB.at, storey: l.placeA.storey })),
    plane,
  );
  const drawn = [...points, ...pipes.fragments];
  return {
    plane,
    fragments: drawn,
    rooms,
    legs,
    at: pipes.at,
    items: pipes.items,
    lengths: lengthsOf(plan, pipes, plane),
    levels: isoLevels(plan, legs, pipes.at),
    box: drawn.length > 0 ? union(drawn.map((f) => f.box)) : makeFragment('', '', 'run', []).box,
  };
}

const kept = new WeakMap<Plan, Map<string, IsoDrawing>>();

/** The isometric of what a scope holds in a case: worked out once for each plan. */
export function isoDrawing(plan: Plan, chosen: Case, scope: IsoScope, quarter: Quarter): IsoDrawing {
  const key = `${chosen.option ?? ''}|${chosen.when}|${scopeKey(scope)}|${quarter}`;
  const of = kept.get(plan) ?? new Map<string, IsoDrawing>();
  kept.set(plan, of);
  const known = of.get(key) ?? draw(plan, chosen, scope, quarter);
  of.set(key, known);
  return known;
}
