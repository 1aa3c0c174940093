import type { Plan } from '../../plan/plan.ts';
import type { Fragment, RiserWords, Spread, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { Plane } from '../pipes/plane.ts';
import type { Riser } from '../pipes/risers.ts';
import { levelOf, shortLevel } from '../text/say-level.ts';
import { makeFragment } from './fragment.ts';

const pointAt = (plan: Plan, vertex: string): string | undefined => {
  const slash = vertex.indexOf('/');
  return slash < 0 ? undefined : plan.points[vertex.slice(0, slash)]?.name;
};

/** "up 500 to 2420", "15 down to 900": with its size where no neighbour on the drawing says it. */
export function sayRiser(plan: Plan, riser: Riser, storey: string, sized: boolean): string {
  const size = sized && riser.owner.size !== '' ? `${riser.owner.size} ` : '';
  const end = riser.legs.at(-1)?.placeB.storey ?? storey;
  const upTo = levelOf(plan, riser.upTo, end, storey);
  const floor = plan.storeys[storey]?.floorMm ?? 0;
  // Both under the same floor: it is named once.
  const under = end === storey && Math.max(riser.from, riser.upTo) < floor;
  const from = under ? `${Math.round(floor - riser.from)}` : levelOf(plan, riser.from, storey);
  return riser.upTo > riser.from ? `${size}up ${from} to ${upTo}` : `${size}down to ${upTo}`;
}

/** How a riser leaves the point that it starts or ends at; undefined where both its ends are free. */
function fromPoint(plan: Plan, riser: Riser, storey: string): RiserWords['from'] {
  const starts = riser.startVertex.indexOf('/');
  const ends = riser.endVertex.indexOf('/');
  const out = starts >= 0;
  if (!out && ends < 0) return undefined;
  const [here, there] = out ? [riser.from, riser.upTo] : [riser.upTo, riser.from];
  const point = out ? riser.startVertex.slice(0, starts) : riser.endVertex.slice(0, ends);
  return { point, up: there > here, level: shortLevel(plan, there, storey), z: there };
}

/** A leg seen from its end: comes up to the reader, or goes away. */
export function riserFragment(
  plan: Plan,
  riser: Riser,
  plane: Plane,
  spread: Spread | undefined,
  sized: boolean,
  roomMm: number | undefined,
): Fragment {
  const { owner } = riser;
  const moved = spread ? { spread } : {};
  const ends = pointAt(plan, riser.endVertex);
  const from = fromPoint(plan, riser, plane.storey);
  const wishes: Wish[] =
    plane.view.kind === 'plan'
      ? [
          {
            w: 'flag',
            at: owner.a,
            what: sayRiser(plan, riser, plane.storey, sized),
            how: ends === undefined ? null : `to ${ends.charAt(0).toLowerCase()}${ends.slice(1)}`,
            rank: 2,
            clearMm: PEN.riseRadius,
            riser: {
              letters: owner.letters,
              up: riser.upTo > riser.from,
              level: shortLevel(plan, riser.upTo, plane.storey),
              z: riser.upTo,
              ...(from ? { from } : {}),
            },
            ...moved,
          },
        ]
      : [];
  return makeFragment(
    owner.record.id,
    owner.map,
    'item',
    [
      {
        t: 'mark',
        mark: riser.upTo > riser.from ? 'rise' : 'drop',
        at: owner.a,
        turnDeg: 0,
        ink: owner.style.ink,
        ...moved,
        ...(roomMm === undefined ? {} : { roomMm }),
      },
    ],
    wishes,
  );
}
