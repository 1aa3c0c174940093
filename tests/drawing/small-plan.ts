import { emptyPlan } from '../../src/plan/empty-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Opening, Void, Wall } from '../../src/plan/records/building.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';
import type { Leg, PlanNode, Run, Stretch } from '../../src/plan/records/pipework.ts';

type Place = readonly [x: number, y: number, z: number];

export const AFTER = { option: 'A', when: 'after' } as const;
export const BEFORE = { option: 'A', when: 'before' } as const;
export const PLAN_VIEW = { kind: 'plan', storey: 'S' } as const;

const height = (mm: number): HeightRef => ({ from: 'floor', of: 'S', mm });

/** One storey "S", one option "A", ceiling 2400, floor 250 thick. */
export function page(): Plan {
  return emptyPlan({ id: 'p', name: 'Test', storey: 'S', option: 'A', ceilingMm: 2400, buildUpMm: 250 });
}

export function node(plan: Plan, id: string, [x, y, z]: Place): PlanNode {
  const made: PlanNode = {
    id,
    place: { on: 'storey', storey: 'S', x, y, height: height(z) },
    turn: null,
    option: null,
  };
  plan.nodes[id] = made;
  return made;
}

export interface RunChoices {
  readonly service?: string;
  readonly size?: string | null;
  readonly option?: string | null;
  readonly sureness?: Leg['sureness'];
}

/** A run through places, in order: nodes `id.0`, `id.1`… and legs `id-1`, `id-2`… Places that are ids are used as they are. */
export function run(plan: Plan, id: string, through: readonly (Place | string)[], choices: RunChoices = {}): Run {
  const { service = 'gas', size = '22x0.9', option = 'A', sureness = 'seen' } = choices;
  const made: Run = { id, service, name: id, joining: 'endFeed', turns: 'elbow', option };
  plan.runs[id] = made;
  const ids = through.map((place, i) => (typeof place === 'string' ? place : node(plan, `${id}.${i}`, place).id));
  ids.slice(1).forEach((b, i) => {
    const leg: Leg = {
      id: `${id}-${i + 1}`,
      run: id,
      a: ids[i] as string,
      b,
      tube: { kind: 'copper', size },
      insulation: null,
      option,
      sureness,
    };
    plan.legs[leg.id] = leg;
  });
  return made;
}

export function stretch(
  plan: Plan,
  id: string,
  of: string,
  a: string,
  b: string,
  more: Partial<Stretch> = {},
): Stretch {
  const made: Stretch = {
    id,
    run: of,
    a,
    b,
    lengthMm: { lo: 3000, hi: 5000 },
    bends: { lo: 2, hi: 4 },
    tube: { kind: 'copper', size: null },
    option: null,
    ...more,
  };
  plan.stretches[id] = made;
  return made;
}

export function wall(
  plan: Plan,
  id: string,
  a: readonly [number, number],
  b: readonly [number, number],
  more: Partial<Wall> = {},
): Wall {
  const made: Wall = {
    id,
    storey: 'S',
    a: { x: a[0], y: a[1] },
    b: { x: b[0], y: b[1] },
    thicknessMm: 100,
    construction: 'block',
    heightMm: null,
    option: null,
    sureness: 'seen',
    ...more,
  };
  plan.walls[id] = made;
  return made;
}

export function opening(plan: Plan, id: string, on: string, more: Partial<Opening> = {}): Opening {
  const made: Opening = {
    id,
    wall: on,
    kind: 'door',
    name: '',
    from: 'a',
    alongMm: 500,
    widthMm: 800,
    sillMm: 0,
    headMm: 2000,
    opens: true,
    hinge: 'a',
    swings: 'left',
    option: null,
    sureness: 'seen',
    ...more,
  };
  plan.openings[id] = made;
  return made;
}

export function ceilingVoid(plan: Plan, id: string, more: Partial<Void> = {}): Void {
  const made: Void = {
    id,
    storey: 'S',
    name: 'False ceiling',
    kind: 'ceiling',
    outline: [
      { x: 0, y: 0 },
      { x: 2000, y: 0 },
      { x: 2000, y: 1000 },
      { x: 0, y: 1000 },
    ],
    holes: [],
    bottom: height(2150),
    top: { from: 'ceiling', of: 'S', mm: 0 },
    joists: {
      kind: 'battens',
      wayDeg: 90,
      centresMm: 400,
      first: { x: 200, y: 0 },
      depthMm: 75,
      breadthMm: 47,
      bottom: height(2163),
      spanMm: null,
      exceptions: [],
    },
    bearings: [],
    ventilated: null,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
    ...more,
  };
  plan.voids[id] = made;
  return made;
}

/** A room 4 m by 3 m inside, its lower left inside corner at (0, 0): walls w-s, w-e, w-n, w-w. */
export function room(plan: Plan): Plan {
  wall(plan, 'w-s', [-100, -50], [4100, -50]);
  wall(plan, 'w-e', [4050, -100], [4050, 3100]);
  wall(plan, 'w-n', [4100, 3050], [-100, 3050]);
  wall(plan, 'w-w', [-50, 3100], [-50, -100]);
  plan.rooms.kitchen = {
    id: 'kitchen',
    storey: 'S',
    seed: { x: 2000, y: 1500 },
    name: 'Kitchen',
    use: 'kitchen',
    heated: null,
    floorMm: null,
    ceilingMm: null,
    finishes: '',
    escapeRoute: null,
  };
  return plan;
}

/** `count` runs of two legs on a field of 1 m squares, equally dense whatever the count. */
export function field(count: number): Plan {
  const plan = page();
  const side = Math.ceil(Math.sqrt(count));
  for (let i = 0; i < count; i++) {
    const [x, y] = [(i % side) * 1000, Math.floor(i / side) * 1000];
    run(plan, `r${i}`, [
      [x, y, 100],
      [x + 600, y, 100],
      [x + 600, y + 600, 100],
    ]);
  }
  return plan;
}
