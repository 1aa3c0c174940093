import type { Plan } from '../../src/plan/plan.ts';
import type { HouseKit } from './house-kit.ts';

export const GROUND = 'G';
export const FIRST = 'F';

type Pair = readonly [number, number];
type WallTold = readonly [id: string, a: Pair, b: Pair, thickness: number, construction: string];

const CAVITY = 'external cavity';
/** Outside walls of the house as it was: they stand on both floors. */
const MAIN: readonly WallTold[] = [
  ['W', [150, 0], [150, 8000], 300, CAVITY],
  ['E', [6850, 0], [6850, 8000], 300, CAVITY],
  ['S', [0, 150], [7000, 150], 300, CAVITY],
  ['N', [0, 7850], [7000, 7850], 300, CAVITY],
];
const GROUND_WALLS: readonly WallTold[] = [
  ['DXW', [2150, 8000], [2150, 14600], 300, CAVITY],
  ['DXE', [6850, 8000], [6850, 14600], 300, CAVITY],
  ['DXN', [2000, 14450], [7000, 14450], 300, CAVITY],
  ['DP1', [2300, 12000], [6700, 12000], 100, 'stud'],
  ['DP2', [4600, 12050], [4600, 14300], 100, 'stud'],
  ['DP3', [300, 4000], [6700, 4000], 100, 'block'],
  ['DP4', [3400, 4050], [3400, 7700], 100, 'stud'],
];

const doors: readonly [wall: string, id: string, name: string, along: number, width: number, head: number][] = [
  ['DS', 'dd1', 'Front door', 3000, 950, 2050],
  ['DXW', 'dd2', 'Folding doors', 600, 2800, 2150],
  ['DXE', 'dd3', 'Side door', 1900, 900, 2100],
  ['DXN', 'dd4', 'Boot room outside door', 3600, 850, 2100],
  ['DP1', 'dd5', 'Boot room door', 2700, 760, 2000],
  ['DP1', 'dd6', 'Study door', 500, 760, 2000],
  ['DP3', 'dd7', 'Front room door', 2500, 800, 2000],
  ['DP4', 'dd8', 'Dining room door', 900, 800, 2000],
];
const windows: readonly [
  wall: string,
  id: string,
  name: string,
  along: number,
  width: number,
  sill: number,
  opens: boolean,
][] = [
  ['DE', 'dw1', 'Old kitchen window', 4400, 1200, 1050, true],
  ['DXE', 'dw2', 'High window', 3000, 800, 1500, false],
  ['DXN', 'dw3', 'Study window', 800, 1200, 900, true],
];

function walls(k: HouseKit): void {
  for (const [side, ...rest] of MAIN) {
    k.wall(`D${side}`, ...rest, GROUND);
    k.wall(`DF${side}`, ...rest, FIRST);
  }
  for (const [id, a, b, thickness, construction] of GROUND_WALLS) k.wall(id, a, b, thickness, construction);
  const through = { alongMm: 2600, widthMm: 3600, headMm: 2300 };
  k.opening('DN', 'do1', { kind: 'archway', name: 'Opening under the steel', ...through });
  for (const [wall, id, name, alongMm, widthMm, headMm] of doors) {
    k.opening(wall, id, { kind: 'door', name, alongMm, widthMm, headMm });
  }
  for (const [wall, id, name, alongMm, widthMm, sillMm, opens] of windows) {
    k.opening(wall, id, { kind: 'window', name, alongMm, widthMm, sillMm, headMm: 2100, opens });
  }
}

function rooms(k: HouseKit): void {
  const warm = (finishes: string) => ({ heated: true, finishes });
  k.room('front', 'Front room', 'living', [3000, 2000], warm('boards, papered'));
  k.room('dining', 'Dining room', 'dining', [1800, 6000], warm('boards, papered'));
  k.room('old-kitchen', 'Old kitchen', 'kitchen', [5000, 6000], warm('tiled floor, to be cleared'));
  k.room('kitchen', 'New kitchen', 'kitchen', [4500, 10000], warm('not finished'));
  k.room('study', 'Study', 'study', [3400, 13200], warm('not finished'));
  k.room('boot-room', 'Boot room', 'utility', [5500, 13200], warm('not finished'));
  k.room('upstairs', 'Upstairs, not looked at', 'bedroom', [3000, 2000], {}, FIRST);
}

/** Walls, openings, rooms and the ground outside, 150 below the floor. */
export function extensionBuilding(plan: Plan, k: HouseKit): void {
  walls(k);
  rooms(k);
  const level = (id: string, from: Pair, to: Pair, kind: string) => {
    const line = [from, to].map(([x, y]) => ({ x, y, z: -150 }));
    plan.grounds[id] = { id, line, kind, sureness: 'seen' };
  };
  level('ground-east', [7000, 0], [7000, 14600], 'paved side path');
  level('ground-north', [7000, 14600], [2000, 14600], 'lawn on clay');
  level('ground-south', [0, 0], [7000, 0], 'front path');
}
