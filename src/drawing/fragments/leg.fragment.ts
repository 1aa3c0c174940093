import type { Fragment, Item, LineItem, Spread, Vec, Wish } from '../display-list.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { makeFragment } from './fragment.ts';

export interface LegSurroundings {
  readonly spread: readonly [Spread | undefined, Spread | undefined];
  readonly trim: Vec;
  readonly gaps: NonNullable<LineItem['gaps']>;
  readonly wishes: readonly Wish[];
}

/** Fall told on the drawing: steeper than this it is a slope, not a fall. */
const STEEPEST_FALL = 0.25;

const round = (mm: number): string => Math.round(mm).toString();

/** A pipe that runs downhill, and does: the wedge above it and the words beside it. */
function fall(leg: DrawnLeg, spread: LegSurroundings['spread'], inPlan: boolean): { items: Item[]; wishes: Wish[] } {
  const dz = leg.placeA.at.z - leg.placeB.at.z;
  const along = Math.hypot(leg.placeA.at.x - leg.placeB.at.x, leg.placeA.at.y - leg.placeB.at.y);
  if (!leg.runsDownhill || Math.abs(dz) < 0.5 || along < 1 || Math.abs(dz) / along > STEEPEST_FALL) {
    return { items: [], wishes: [] };
  }
  const [high, low] = dz > 0 ? [leg.a, leg.b] : [leg.b, leg.a];
  const middle: Vec = [(leg.a[0] + leg.b[0]) / 2, (leg.a[1] + leg.b[1]) / 2];
  const turnDeg = (Math.atan2(low[1] - high[1], low[0] - high[0]) * 180) / Math.PI;
  // Above the line as it is read: told from right to left, "above" is the other side of its own direction.
  const upsideDown = Math.abs(turnDeg) > 90.5;
  const own = spread[0]?.[0];
  return {
    items: [
      {
        t: 'mark',
        mark: upsideDown ? 'wedgeUnder' : 'wedge',
        at: middle,
        turnDeg,
        ink: 'ink2',
        ...(own ? { spread: [own] } : {}),
      },
    ],
    wishes: [
      {
        w: 'flag',
        at: middle,
        what: `falls ${round(Math.abs(dz))} in ${round(along)}`,
        how: null,
        rank: inPlan ? 4 : 3,
        near: true,
        clearMm: 3.2,
        ...(own ? { spread: [own] } : {}),
      },
    ],
  };
}

/** A leg or stretch that lies across the view: its line, what it says of itself. */
export function legFragment(leg: DrawnLeg, around: LegSurroundings, inPlan: boolean): Fragment {
  const [from, upTo] = around.spread;
  const moves = from !== undefined || upTo !== undefined;
  const line: LineItem = {
    t: 'line',
    pts: [leg.a, leg.b],
    style: leg.style,
    ...(around.trim[0] > 0 || around.trim[1] > 0 ? { trim: around.trim } : {}),
    ...(around.gaps.length > 0 ? { gaps: around.gaps } : {}),
    ...(moves ? { spread: [from ?? [], upTo ?? []] } : {}),
  };
  const told = fall(leg, around.spread, inPlan);
  const tag: Wish = {
    w: 'tag',
    stretch: `${leg.run} ${leg.tag} ${leg.state}`,
    text: leg.tag,
    ink: leg.unknown ? 'cantTell' : leg.style.ink,
    from: leg.a,
    to: leg.b,
    ...(moves ? { spread: [from ?? [], upTo ?? []] } : {}),
  };
  return makeFragment(leg.record.id, leg.map, 'run', [line, ...told.items], [tag, ...told.wishes, ...around.wishes]);
}
