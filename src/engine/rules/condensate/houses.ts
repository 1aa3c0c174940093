import type { Plan } from '../../../plan/plan.ts';
import type { Void } from '../../../plan/records/building.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example, type Stop } from '../../example.ts';

/** A void of which nobody knows the heights. */
export const bareVoid = (id: string, change: Partial<Void> = {}): Void => ({
  id,
  storey: 'ground',
  name: '',
  kind: 'slab',
  outline: [
    { x: -2950, y: -2950 },
    { x: -50, y: -2950 },
    { x: -50, y: -50 },
    { x: -2950, y: -50 },
  ],
  holes: [],
  bottom: null,
  top: null,
  joists: null,
  bearings: [],
  ventilated: null,
  mayBeCut: null,
  option: null,
  sureness: 'seen',
  ...change,
});

/** One room, three metres square, its walls 100 thick; everything right of x = 0 is outside. */
export function room(heated: boolean | null = true): ExamplePlan {
  const e = example();
  const corners = [
    [-3000, -3000],
    [0, -3000],
    [0, 0],
    [-3000, 0],
  ] as const;
  corners.forEach((a, i) => {
    e.wall(`w${i}`, a, corners[(i + 1) % corners.length] ?? a, { construction: 'outside wall' });
  });
  return e.room('room', 'Utility', [-1500, -1500], { heated });
}

type Fields = Point['fields'];
const PLASTIC = { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' } as const;
const WASTE = { kind: 'waste', size: '32', joining: 'solvent' } as const;

export interface Outward {
  readonly drawnRooms?: boolean;
  /** Metres from the wall to the gully. */
  readonly outM?: number;
  readonly size?: '21.5' | '32';
  /** Where the pipe is enlarged: x in mm, below zero inside. Left out: one size all the way. */
  readonly enlargedAt?: number;
  readonly insulationMm?: number;
  readonly fields?: Fields;
}

/** A pipe from the room through its wall to a gully outside. */
export function outward(how: Outward = {}): Plan {
  const { drawnRooms = true, outM = 1, size = '32', enlargedAt, insulationMm, fields } = how;
  const e = drawnRooms ? room() : example();
  const x = outM * 1000;
  e.point('gully', 'gully', [x + 62.5, -1375, -100], { drains: 'foul', ...fields });
  const words = { ...(size === '32' ? WASTE : PLASTIC), ...(insulationMm === undefined ? {} : { insulationMm }) };
  const end: Stop[] = [[x, -1500, 600], { point: 'gully', connection: 'condensate' }];
  if (enlargedAt === undefined) return e.run('k', 'condensate', [[-800, -1500, 760 + 60 * outM], ...end], words).plan;
  e.run(
    'k',
    'condensate',
    [
      [-800, -1500, 800],
      [enlargedAt, -1500, 740],
    ],
    PLASTIC,
  );
  const [, joint = ''] = e.nodesOf('k');
  return e.run('k2', 'condensate', [joint, ...end], words).plan;
}

/** A pipe inside the room down to a point of a kind. */
export function intoPoint(kind: string, fields: Fields = {}, connection = 'in', z = 0): Plan {
  const e = room();
  e.point(kind, 'end', [-1500, -1500, z], fields);
  const local = e.plan.points.end?.connections.find((c) => c.id === connection);
  const [x, y, top] = [-1500 + (local?.at.x ?? 0), -1500 - (local?.at.y ?? 0), z + (local?.at.z ?? 0)];
  const from: Stop[] =
    local?.facing === 'front'
      ? [[x, y - 900, top + 60]]
      : [
          [x, y - 900, top + 400],
          [x, y, top + 340],
        ];
  return e.run('k', 'condensate', [...from, { point: 'end', connection }], PLASTIC).plan;
}
