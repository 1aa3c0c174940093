import { makePoint } from '../../../catalogue/make-point.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Room, Wall } from '../../../plan/records/building.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example } from '../../example.ts';

type Fields = Point['fields'];

/** A boiler of 400 by 300 by 700 with its back to the inside of a wall along y 0, faced from above it in plan. */
export function setBoiler(plan: Plan, x: number, fields: Fields = {}, y = 50, z = 1300): Plan {
  const made = makePoint('boiler', {
    id: 'b',
    storey: 'ground',
    place: { on: 'storey', x, y, angleDeg: 180, height: { from: 'datum', of: null, mm: z } },
    option: 'A',
  });
  plan.points.b = { ...made, fields: { ...made.fields, ...fields } };
  return plan;
}

/** A room 3000 by 2500 inside. Its inside faces lie at 0 and 3000 across, 0 and 2500 up. */
export function walled(name: string, change: Partial<Room> = {}, south: Partial<Wall> = {}): ExamplePlan {
  return example()
    .wall('s', [-50, -50], [3050, -50], south)
    .wall('e', [3050, -50], [3050, 2550])
    .wall('n', [3050, 2550], [-50, 2550])
    .wall('w', [-50, 2550], [-50, -50])
    .room('room', name, [1500, 1500], change);
}

/** In a room, `fromCorner` from the inside of its left-hand wall to the middle of the case. */
export const inRoom = (fields: Fields, fromCorner = 1500, name = 'Utility', change: Partial<Room> = {}): Plan =>
  setBoiler(walled(name, change).plan, fromCorner, fields, 0);

/** A cupboard 600 wide and 350 deep, with or without a door across its front. */
export function cupboard(door: boolean, fields: Fields = {}): Plan {
  const e = example()
    .wall('s', [-50, -50], [650, -50])
    .wall('e', [650, -50], [650, 400])
    .wall('n', [650, 400], [-50, 400])
    .wall('w', [-50, 400], [-50, -50])
    .room('room', 'Cupboard', [300, 330]);
  if (door) e.opening('d', 'n', 50, 600, { headMm: 2300 });
  return setBoiler(e.plan, 300, fields, 0);
}

/** A boiler beside a door that opens inwards against its case. */
export function doorInto(): Plan {
  const e = walled('Utility').opening('d', 'w', 1650, 800, { hinge: 'b', swings: 'left' });
  return setBoiler(e.plan, 400, {}, 0);
}

/** Another thing in the room, at a place of its own. */
export function add(
  plan: Plan,
  kind: string,
  id: string,
  at: readonly [number, number, number],
  fields: Fields = {},
  option: string | null = 'A',
  angleDeg = 180,
): Plan {
  const [x, y, mm] = at;
  const made = makePoint(kind, {
    id,
    storey: 'ground',
    place: { on: 'storey', x, y, angleDeg, height: { from: 'datum', of: null, mm } },
    option,
  });
  plan.points[id] = { ...made, fields: { ...made.fields, ...fields } };
  return plan;
}

/** A cupboard in the corner of a bathroom, its door to the bathroom. */
export function cupboardOffBathroom(fields: Fields): Plan {
  const e = walled('Bathroom')
    .wall('cn', [-50, 700], [750, 700])
    .wall('ce', [750, 700], [750, -50])
    .room('cupboard', 'Cupboard', [600, 600])
    .opening('d', 'cn', 100, 600, { headMm: 2300 });
  return setBoiler(e.plan, 350, fields, 0);
}
