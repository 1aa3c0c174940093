import type { Fragment, Item, Spread, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { type Joint, outOf } from '../pipes/joints.ts';
import { makeFragment } from './fragment.ts';

const endAt = (leg: DrawnLeg, vertex: string): Vec => (leg.vertexA === vertex ? leg.a : leg.b);
const farEnd = (leg: DrawnLeg, vertex: string): Vec => (leg.vertexA === vertex ? leg.b : leg.a);

/** The most a rounded corner may take of either of two legs. */
export const cornerMost = (one: DrawnLeg, other: DrawnLeg): number => Math.min(one.lengthMm, other.lengthMm) / 2;

function itemsOf(vertex: string, joint: Joint, spread: Spread | undefined): Item[] {
  const [one, other] = joint.flat;
  if (!one) return [];
  const at = endAt(one, vertex);
  const moved = spread ? { spread } : {};
  const mark = (name: string, turnDeg = 0): Item => ({
    t: 'mark',
    mark: name,
    at,
    turnDeg,
    ink: one.style.ink,
    ...moved,
  });
  if (joint.is === 'tee') return [mark('tee')];
  if (joint.is === 'end') {
    const [x, y] = outOf(one, vertex);
    return [mark('openEnd', (Math.atan2(y, x) * 180) / Math.PI)];
  }
  if (joint.is === 'corner' && other) {
    const heavier = other.style.pen > one.style.pen ? other : one;
    return [
      {
        t: 'corner',
        at,
        a: farEnd(one, vertex),
        b: farEnd(other, vertex),
        style: heavier.style,
        radiusMm: PEN.cornerRadius,
        most: cornerMost(one, other),
        ...moved,
      },
    ];
  }
  if (joint.is === 'reducer' && other) {
    const narrow = one.radiusMm < other.radiusMm ? one : other;
    const [x, y] = outOf(narrow, vertex);
    return [mark('reducer', (Math.atan2(y, x) * 180) / Math.PI)];
  }
  return [];
}

/** What is seen where legs meet; undefined where nothing is. */
export function jointFragment(
  nodeId: string,
  vertex: string,
  joint: Joint,
  spread: Spread | undefined,
): Fragment | undefined {
  const items = itemsOf(vertex, joint, spread);
  return items.length === 0 ? undefined : makeFragment(nodeId, 'nodes', joint.is === 'corner' ? 'run' : 'item', items);
}
