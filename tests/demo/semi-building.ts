import type { Plan } from '../../src/plan/plan.ts';
import type { Wall } from '../../src/plan/records/building.ts';
import type { HouseKit } from './house-kit.ts';

export const GROUND = 'G';
export const FIRST = 'F';

type Pair = readonly [number, number];
type WallTold = readonly [id: string, a: Pair, b: Pair, thickness: number, construction: string];

const CAVITY = 'external cavity';
const OUTSIDE: readonly WallTold[] = [
  ['S', [0, 150], [8400, 150], 300, CAVITY],
  ['E', [8250, 0], [8250, 7200], 300, CAVITY],
  ['N', [0, 7050], [8400, 7050], 300, CAVITY],
];
const GROUND_WALLS: readonly WallTold[] = [
  ['GP1', [2400, 300], [2400, 4050], 100, 'stud'],
  ['GP2', [250, 4100], [8100, 4100], 100, 'block'],
  ['GP3', [6150, 4150], [6150, 6900], 100, 'stud'],
];
const FIRST_WALLS: readonly WallTold[] = [
  ['FP1', [2400, 300], [2400, 3100], 100, 'stud'],
  ['FP7', [2400, 3100], [6950, 3100], 100, 'stud'],
  ['FP8', [6950, 2250], [6950, 4100], 100, 'stud'],
  ['FP9', [6950, 2250], [8100, 2250], 100, 'stud'],
  ['FP2', [250, 4100], [8100, 4100], 100, 'stud'],
  ['FP5', [2600, 4150], [2600, 6900], 100, 'stud'],
  ['FP6', [6150, 4150], [6150, 6900], 100, 'stud'],
];
/** The en-suite is made in the same job. */
const NEW_WALLS: readonly WallTold[] = [
  ['FP10', [6250, 1950], [8100, 1950], 100, 'stud'],
  ['FP11', [6250, 300], [6250, 1950], 100, 'stud'],
];

const doors: readonly [wall: string, id: string, name: string, along: number, width: number, head: number][] = [
  ['GS', 'gd1', 'Front door', 700, 900, 2100],
  ['GE', 'gd2', 'Side door', 4700, 850, 2100],
  ['GN', 'gd3', 'Patio doors', 3600, 1800, 2100],
  ['GP1', 'd1', 'Living room door', 2600, 800, 2000],
  ['GP2', 'd2', 'Kitchen door', 900, 800, 2000],
  ['GP2', 'd3', 'Double doors', 4200, 1500, 2000],
  ['GP3', 'd4', 'Utility door', 400, 800, 2000],
  ['FP7', 'd5', 'Bed 1 door', 300, 760, 2000],
  ['FP8', 'd6', 'Cylinder cupboard door', 950, 760, 2000],
  ['FP2', 'd7', 'Bathroom door', 1450, 760, 2000],
  ['FP2', 'd8', 'Bed 2 door', 2900, 760, 2000],
  ['FP2', 'd10', 'Linen room door', 5970, 700, 2000],
];

/** Whether the landing window opens was not told. */
const windows: readonly [
  wall: string,
  id: string,
  name: string,
  along: number,
  width: number,
  sill: number,
  opens: boolean | null,
][] = [
  ['GS', 'gw1', 'Living room window', 3600, 2100, 800, true],
  ['GN', 'gw2', 'Kitchen window', 1000, 1200, 1050, true],
  ['GN', 'gw3', 'Utility window', 6600, 900, 1050, true],
  ['FS', 'fw1', 'Landing window', 800, 900, 1000, null],
  ['FS', 'fw2', 'Bed 1 window', 3600, 2100, 900, true],
  ['FN', 'fw3', 'Bathroom window', 900, 600, 1200, true],
  ['FN', 'fw4', 'Bed 2 window', 3600, 1500, 900, true],
  ['FN', 'fw5', 'Linen room window', 6700, 900, 1000, true],
];

function walls(k: HouseKit): void {
  const make = ([id, a, b, thickness, construction]: WallTold, on: string, of: Wall['option'] = null) =>
    k.wall(id, a, b, thickness, construction, on, of);
  for (const storey of [GROUND, FIRST]) {
    const party = 'party wall, masonry';
    k.wall(`${storey}W`, [125, 0], [125, 7200], 250, party, storey, null, { party: true });
    for (const [side, ...rest] of OUTSIDE) make([`${storey}${side}`, ...rest], storey);
  }
  for (const told of GROUND_WALLS) make(told, GROUND);
  for (const told of FIRST_WALLS) make(told, FIRST);
  for (const told of NEW_WALLS) make(told, FIRST, 'A');
}

function openings(k: HouseKit): void {
  for (const [wall, id, name, alongMm, widthMm, headMm] of doors) {
    k.opening(wall, id, { kind: 'door', name, alongMm, widthMm, headMm });
  }
  k.opening('FP11', 'd9', {
    kind: 'door',
    name: 'En-suite door',
    alongMm: 500,
    widthMm: 760,
    headMm: 2000,
    option: 'A',
  });
  for (const [wall, id, name, alongMm, widthMm, sillMm, opens] of windows) {
    k.opening(wall, id, { kind: 'window', name, alongMm, widthMm, sillMm, headMm: 2100, opens });
  }
}

function rooms(k: HouseKit): void {
  const warm = (finishes: string) => ({ heated: true, finishes });
  k.room('hall', 'Hall', 'hall', [1300, 2000], warm('laminate, papered'));
  k.room('living', 'Living room', 'living', [5000, 2000], warm('carpet, papered'));
  k.room('kitchen', 'Kitchen and dining', 'kitchen', [3000, 5500], warm('tiled floor, to be refitted'));
  k.room('utility', 'Utility', 'utility', [7100, 5500], warm('tiled floor, painted'));
  k.room('landing', 'Landing', 'hall', [1300, 2000], warm('carpet, papered'), FIRST);
  k.room('bed-1', 'Bed 1', 'bedroom', [4000, 1500], warm('carpet, papered'), FIRST);
  k.room('en-suite', 'En-suite', 'bathroom', [7100, 1000], warm('tiled'), FIRST);
  k.room('cylinder-cupboard', 'Cylinder cupboard', 'cupboard', [7500, 2400], { heated: true }, FIRST);
  k.room('bathroom', 'Bathroom', 'bathroom', [1400, 5500], warm('tiled'), FIRST);
  k.room('bed-2', 'Bed 2', 'bedroom', [4000, 5500], warm('carpet, painted'), FIRST);
  k.room('linen-room', 'Linen room', 'utility', [7000, 5500], warm('carpet, painted'), FIRST);
}

/** Walls, openings, rooms and the ground outside. Floors and roof are told apart. */
export function semiBuilding(plan: Plan, k: HouseKit): void {
  walls(k);
  openings(k);
  rooms(k);
  const level = (id: string, from: Pair, to: Pair, kind: string) => {
    const line = [from, to].map(([x, y]) => ({ x, y, z: 0 }));
    plan.grounds[id] = { id, line, kind, sureness: 'seen' };
  };
  level('ground-east', [8400, -300], [8400, 7500], 'paved side path');
  level('ground-north', [8400, 7200], [0, 7200], 'patio');
  level('ground-south', [0, 0], [8400, 0], 'front path');
}
