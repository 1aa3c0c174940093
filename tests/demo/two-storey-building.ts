import type { Plan } from '../../src/plan/plan.ts';
import { ceiling, floor, type HouseKit, outlineOf, voidBottom } from './house-kit.ts';

export const GROUND = 'G';
export const FIRST = 'F';
/** The first floor, where every new pipe goes. */
export const FLOOR_VOID = 'FV';

type Pair = readonly [number, number];
const outside: readonly [side: string, a: Pair, b: Pair][] = [
  ['S', [0, 140], [7200, 140]],
  ['N', [0, 5860], [7200, 5860]],
  ['W', [140, 0], [140, 6000]],
  ['E', [7060, 0], [7060, 6000]],
];

function walls(k: HouseKit): void {
  for (const storey of [GROUND, FIRST]) {
    for (const [side, a, b] of outside) k.wall(`${storey}${side}`, a, b, 280, 'external cavity', storey);
  }
  k.wall('GP1', [4000, 280], [4000, 5720], 100, 'block');
  k.wall('GP2', [280, 3050], [3950, 3050], 100, 'block');
  k.wall('GP3', [4050, 4450], [6920, 4450], 75, 'stud');
  k.wall('FP1', [4000, 280], [4000, 5720], 100, 'stud', FIRST);
  k.wall('FP2', [280, 3050], [3950, 3050], 100, 'stud', FIRST);
  k.wall('FP3', [4050, 4050], [6920, 4050], 100, 'stud', FIRST);
  k.wall('FP4', [5900, 3000], [6920, 3000], 75, 'stud', FIRST);
  k.wall('FP5', [5900, 3000], [5900, 4000], 75, 'stud', FIRST);
}

const doors: readonly [wall: string, id: string, name: string, along: number, width: number][] = [
  ['GS', 'gd1', 'Front door', 5000, 900],
  ['GW', 'gd2', 'Back door', 3300, 838],
  ['GP1', 'gd3', 'Lounge door', 1200, 762],
  ['GP1', 'gd4', 'Kitchen door', 4300, 762],
  ['GP3', 'gd5', 'Cloakroom door', 1000, 686],
  ['FP1', 'fd1', 'Bed 1 door', 1200, 762],
  ['FP1', 'fd2', 'Bed 2 door', 2900, 762],
  ['FP3', 'fd3', 'Bathroom door', 400, 686],
  ['FP5', 'fd4', 'Airing cupboard door', 150, 610],
];

const windows: readonly [wall: string, id: string, name: string, along: number, width: number, sill: number][] = [
  ['GS', 'gw1', 'Lounge window', 1000, 2000, 700],
  ['GN', 'gw2', 'Kitchen window', 1000, 1500, 1050],
  ['GN', 'gw3', 'Cloakroom window', 5200, 500, 1500],
  ['FS', 'fw1', 'Bed 1 window', 1000, 1800, 900],
  ['FN', 'fw2', 'Bed 2 window', 1000, 1500, 900],
  ['FN', 'fw3', 'Bathroom window', 5200, 600, 1300],
];

function rooms(k: HouseKit): void {
  k.room('lounge', 'Lounge', 'living', [2000, 1500], { heated: true });
  k.room('kitchen', 'Kitchen', 'kitchen', [2000, 4500], { heated: true });
  k.room('hall', 'Hall', 'hall', [5400, 2500], { heated: true });
  k.room('cloakroom', 'Cloakroom', 'cloakroom', [5400, 5100], { heated: true });
  k.room('bed-1', 'Bed 1', 'bedroom', [2000, 1500], { heated: true }, FIRST);
  k.room('bed-2', 'Bed 2', 'bedroom', [2000, 4500], { heated: true }, FIRST);
  k.room('landing', 'Landing', 'hall', [5000, 2000], { heated: true }, FIRST);
  k.room('airing-cupboard', 'Airing cupboard', 'airing', [6300, 3500], { heated: true }, FIRST);
  k.room('bathroom', 'Bathroom', 'bathroom', [5400, 4900], { heated: true }, FIRST);
}

function roofs(plan: Plan): void {
  const rafters = { centresMm: 400, depthMm: 100, breadthMm: 50 };
  const half = (id: string, from: Pair, to: Pair, ridge: readonly [Pair, Pair]) => {
    const [a, b] = outlineOf(from, to);
    if (!a || !b) return;
    const eaves = { a, b, height: floor(FIRST, 2350) };
    const outline = outlineOf(from, to, ...ridge);
    plan.roofs[id] = { id, storey: FIRST, outline, eaves, pitchDeg: 35, rafters, sureness: 'assumed' };
  };
  half(
    'roof-south',
    [0, 0],
    [7200, 0],
    [
      [7200, 3000],
      [0, 3000],
    ],
  );
  half(
    'roof-north',
    [7200, 6000],
    [0, 6000],
    [
      [0, 3000],
      [7200, 3000],
    ],
  );
}

/** Walls, rooms, roof and the first floor's joists. */
export function twoStoreyBuilding(plan: Plan, k: HouseKit): void {
  walls(k);
  for (const [wall, id, name, alongMm, widthMm] of doors) {
    k.opening(wall, id, { kind: 'door', name, alongMm, widthMm, headMm: 2000 });
  }
  for (const [wall, id, name, alongMm, widthMm, sillMm] of windows) {
    k.opening(wall, id, { kind: 'window', name, alongMm, widthMm, sillMm, headMm: 2100 });
  }
  rooms(k);
  roofs(plan);
  k.space({
    id: FLOOR_VOID,
    name: 'First floor',
    kind: 'floor',
    storey: FIRST,
    outline: outlineOf([280, 280], [6920, 280], [6920, 5720], [280, 5720]),
    bottom: ceiling(GROUND, 15),
    top: floor(FIRST, -40),
    joists: {
      kind: 'solid',
      wayDeg: 0,
      centresMm: 400,
      first: { x: 280, y: 480 },
      depthMm: 195,
      breadthMm: 47,
      bottom: voidBottom(FLOOR_VOID, 0),
      spanMm: 2870,
      exceptions: [{ index: 6, offsetMm: 0, what: 'doubled below the cupboard wall' }],
    },
    bearings: [
      { a: { x: 280, y: 280 }, b: { x: 280, y: 5720 } },
      { a: { x: 4000, y: 280 }, b: { x: 4000, y: 5720 } },
      { a: { x: 6920, y: 280 }, b: { x: 6920, y: 5720 } },
    ],
    ventilated: true,
    mayBeCut: true,
  });
  const along = [-300, 6300].map((y) => ({ x: 7200, y, z: -150 }));
  plan.grounds['ground-east'] = { id: 'ground-east', line: along, kind: 'side path', sureness: 'seen' };
}
