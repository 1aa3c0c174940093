import type { ConnectionPlace } from '../../geometry/hosting.ts';
import { left } from '../../geometry/vec.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';

/** As somebody who walks along the pipe says it. */
export type Walk = 'up' | 'down' | 'ahead' | 'left' | 'right';
export const WALKS = ['up', 'down', 'ahead', 'left', 'right'] as const;

export interface Stretch {
  readonly walk: Walk | 'back';
  readonly mm: number;
  /** Where it ends. */
  readonly at: Xyz;
  readonly upright: boolean;
}

interface Axis {
  readonly along: Xyz;
  readonly plus: Stretch['walk'];
  readonly minus: Stretch['walk'];
}

const dot = (a: Xyz, b: Xyz): number => a.x * b.x + a.y * b.y + a.z * b.z;

const axesOf = (facing: Xy): { ahead: Axis; aside: Axis; upright: Axis } => ({
  ahead: { along: { ...facing, z: 0 }, plus: 'ahead', minus: 'back' },
  aside: { along: { ...left(facing), z: 0 }, plus: 'left', minus: 'right' },
  upright: { along: { x: 0, y: 0, z: 1 }, plus: 'up', minus: 'down' },
});

/** The axis a tail is entered along comes last, so that the last leg runs into it; uprights go before a level tail. */
function inOrder(facing: Xy, tail: ConnectionPlace): readonly Axis[] {
  const { ahead, aside, upright } = axesOf(facing);
  if (Math.hypot(tail.facing.x, tail.facing.y) < 0.5) return [ahead, aside, upright];
  const into = (a: Axis): number => Math.abs(dot(a.along, tail.facing));
  return into(ahead) > into(aside) ? [aside, upright, ahead] : [ahead, upright, aside];
}

/**
 * What is left to walk from a place to a tail, an axis at a time in the walker's own frame; lengths in mm. `first` is the
 * axis somebody has set out along already. Empty where the place is at the tail.
 */
export function wayToTail(from: Xyz, facing: Xy, tail: ConnectionPlace, first: Walk | null): readonly Stretch[] {
  const order = inOrder(facing, tail);
  const isFirst = (a: Axis): boolean => first !== null && (a.plus === first || a.minus === first);
  const way = walked(from, tail, [...order.filter(isFirst), ...order.filter((a) => !isFirst(a))]);
  if (way[0]?.walk !== 'back') return way;
  // Straight back would lie on the pipe one has come along: another way is gone before it.
  const { ahead, aside, upright } = axesOf(facing);
  const round = walked(from, tail, [aside, ahead, upright]);
  return round[0]?.walk === 'back' ? walked(from, tail, [upright, ahead]) : round;
}

function walked(from: Xyz, tail: ConnectionPlace, order: readonly Axis[]): readonly Stretch[] {
  let here = from;
  const way: Stretch[] = [];
  for (const axis of order) {
    const by = dot({ x: tail.at.x - here.x, y: tail.at.y - here.y, z: tail.at.z - here.z }, axis.along);
    if (Math.abs(by) < COINCIDENT_MM) continue;
    const { x, y, z } = axis.along;
    here = { x: here.x + x * by, y: here.y + y * by, z: here.z + z * by };
    way.push({ walk: by > 0 ? axis.plus : axis.minus, mm: Math.abs(by), at: here, upright: axis.plus === 'up' });
  }
  return way;
}

/** "4200 ahead, 1250 down". */
export const sayWay = (way: readonly Stretch[]): string => way.map((s) => `${Math.round(s.mm)} ${s.walk}`).join(', ');
