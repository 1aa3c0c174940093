import type { Fragment, Spread, Vec } from '../display-list.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { makeFragment } from './fragment.ts';

/** Steeper than this it is a slope, not a fall. */
const STEEPEST_FALL = 0.25;
/** The wedge stands over its line by so many paper mm. */
const CLEAR_MM = 3.2;

const round = (mm: number): string => Math.round(mm).toString();

/** A pipe that runs downhill, and does: the wedge over it and its words. Undefined where there is no fall to tell. */
export function fallFragment(leg: DrawnLeg, spread: Spread | undefined): Fragment | undefined {
  const dz = leg.placeA.at.z - leg.placeB.at.z;
  const along = Math.hypot(leg.placeA.at.x - leg.placeB.at.x, leg.placeA.at.y - leg.placeB.at.y);
  if (!leg.runsDownhill || Math.abs(dz) < 0.5 || along < 1 || Math.abs(dz) / along > STEEPEST_FALL) return undefined;
  // Seen nearly from its end there is no line to stand over.
  if (leg.lengthMm < along / 2) return undefined;
  const [high, low] = dz > 0 ? [leg.a, leg.b] : [leg.b, leg.a];
  const middle: Vec = [(leg.a[0] + leg.b[0]) / 2, (leg.a[1] + leg.b[1]) / 2];
  const turnDeg = (Math.atan2(low[1] - high[1], low[0] - high[0]) * 180) / Math.PI;
  // Over the line as it is read: of one told from right to left that is the other side of its own direction.
  const upsideDown = Math.abs(turnDeg) > 90.5;
  const moved = spread ? { spread } : {};
  return makeFragment(
    leg.record.id,
    leg.map,
    'item',
    [
      {
        t: 'mark',
        mark: upsideDown ? 'wedgeUnder' : 'wedge',
        at: middle,
        turnDeg,
        ink: 'ink2',
        roomMm: leg.lengthMm / 4,
        ...moved,
      },
    ],
    [
      {
        w: 'flag',
        at: middle,
        what: `falls ${round(Math.abs(dz))} in ${round(along)}`,
        how: null,
        rank: 4,
        along: [leg.a, leg.b],
        clearMm: CLEAR_MM,
        ...moved,
      },
    ],
  );
}
