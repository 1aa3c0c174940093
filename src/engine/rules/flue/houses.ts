import type { Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example } from '../../example.ts';

/** Outer walls 300 thick round 6000 x 4000 from the datum, with one room, and the ground at the datum before the front. */
export function house(): ExamplePlan {
  const e = example()
    .wall('s', [150, 150], [5850, 150], { thicknessMm: 300 })
    .wall('e', [5850, 150], [5850, 3850], { thicknessMm: 300 })
    .wall('n', [5850, 3850], [150, 3850], { thicknessMm: 300 })
    .wall('w', [150, 3850], [150, 150], { thicknessMm: 300 })
    .room('kitchen', 'Kitchen', [3000, 2000], { heated: true });
  e.plan.grounds.g = {
    id: 'g',
    line: [
      { x: 0, y: 0, z: 0 },
      { x: 6000, y: 0, z: 0 },
    ],
    kind: 'path',
    sureness: 'seen',
  };
  return e;
}

/** A terminal out of the front wall: its edges 50 to both sides of the middle, its underside at 2200. */
export const fronted = (fields: Point['fields'] = {}, z = 2200, option: string | null = 'A'): ExamplePlan =>
  house().point('flue-terminal', 't', [3000, 0, z], fields, option);

/** The same with a window in the front wall, so far to the right of the terminal's edge. */
export function besideWindow(gapMm: number, opens: boolean | null = true, option: string | null = 'A'): ExamplePlan {
  return fronted({}, 2200, option).opening('window', 's', 3050 + gapMm - 150, 900, {
    kind: 'window',
    name: 'kitchen window',
    sillMm: 1000,
    headMm: 2300,
    opens,
  });
}
