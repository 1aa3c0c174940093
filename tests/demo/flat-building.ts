import type { Plan } from '../../src/plan/plan.ts';
import { ceiling, type HouseKit, outlineOf, voidBottom } from './house-kit.ts';

export const FLAT = 'B';

const doors: readonly [wall: string, id: string, name: string, along: number, width: number][] = [
  ['BP1', 'e1', 'Kitchen door', 950, 760],
  ['BP1', 'e2', 'Bathroom door', 3450, 760],
  ['BP1', 'e3', 'Bed 2 door', 5950, 760],
  ['BP2', 'e4', 'Bed 1 door', 2550, 760],
  ['BP2', 'e5', 'Meter cupboard door', 5150, 600],
  ['BP3', 'e6', 'Lounge door', 200, 800],
  ['BP8', 'e7', 'Boiler cupboard door', 50, 600],
];

const windows: readonly [wall: string, id: string, name: string, along: number, width: number, sill: number][] = [
  ['BS', 'bw1', 'Lounge window', 1200, 2400, 700],
  ['BS', 'bw2', 'Bed 1 window', 6000, 1800, 900],
  ['BN', 'bw3', 'Kitchen window', 1500, 1200, 1050],
  ['BN', 'bw4', 'Bathroom window', 3700, 600, 1500],
  ['BN', 'bw5', 'Bed 2 window', 6200, 1500, 900],
];

function walls(k: HouseKit): void {
  k.wall('BW', [125, 0], [125, 6600], 250, 'party wall with the next flat', FLAT, null, { party: true });
  k.wall('BE', [8875, 0], [8875, 6600], 250, 'wall to the common stair, protected', FLAT, null, { fire: true });
  k.wall('BS', [0, 140], [9000, 140], 280, 'external cavity');
  k.wall('BN', [0, 6460], [9000, 6460], 280, 'external cavity');
  k.wall('BP1', [250, 4050], [8750, 4050], 100, 'block');
  k.wall('BP2', [2850, 2850], [8750, 2850], 100, 'block');
  k.wall('BP3', [2850, 2850], [2850, 4050], 100, 'block');
  k.wall('BP4', [3050, 4100], [3050, 6320], 100, 'block');
  k.wall('BP5', [5050, 4100], [5050, 6320], 100, 'block');
  k.wall('BP6', [5050, 280], [5050, 2800], 100, 'block');
  k.wall('BP7', [5100, 4850], [5950, 4850], 75, 'stud');
  k.wall('BP8', [5950, 4100], [5950, 4850], 75, 'stud');
  k.wall('BP9', [7850, 2100], [7850, 2850], 75, 'stud');
  k.wall('BP10', [7850, 2100], [8750, 2100], 75, 'stud');
  k.opening('BE', 'bd1', {
    kind: 'door',
    name: 'Flat entrance door, fire door',
    alongMm: 3000,
    widthMm: 900,
    headMm: 2040,
  });
  for (const [wall, id, name, alongMm, widthMm] of doors)
    k.opening(wall, id, { kind: 'door', name, alongMm, widthMm, headMm: 2000 });
  for (const [wall, id, name, alongMm, widthMm, sillMm] of windows) {
    k.opening(wall, id, { kind: 'window', name, alongMm, widthMm, sillMm, headMm: 2100 });
  }
}

function rooms(k: HouseKit): void {
  k.room('lounge', 'Lounge', 'living', [2000, 1500], { heated: true });
  k.room('kitchen', 'Kitchen', 'kitchen', [1600, 5200], { heated: true });
  k.room('bathroom', 'Bathroom', 'bathroom', [4000, 5200], { heated: true, ceilingMm: 2250 });
  k.room('bed-1', 'Bed 1', 'bedroom', [6500, 1500], { heated: true });
  k.room('bed-2', 'Bed 2', 'bedroom', [7200, 5600], { heated: true });
  k.room('hall', 'Hall', 'hall', [5500, 3450], { heated: true, ceilingMm: 2250 });
  k.room('boiler-cupboard', 'Boiler cupboard', 'cupboard', [5500, 4450], { heated: true });
  k.room('meter-cupboard', 'Meter cupboard', 'cupboard', [8300, 2500], { heated: true });
}

function voids(k: HouseKit): void {
  const battens = { kind: 'battens' as const, centresMm: 400, depthMm: 75, breadthMm: 47, exceptions: [] };
  k.space({
    id: 'BV1',
    name: 'Hall false ceiling',
    kind: 'ceiling',
    outline: outlineOf([2900, 2900], [8750, 2900], [8750, 4000], [2900, 4000]),
    bottom: ceiling('hall', 0),
    top: ceiling(FLAT, 0),
    joists: { ...battens, wayDeg: 90, first: { x: 3100, y: 2900 }, bottom: voidBottom('BV1', 13), spanMm: 1100 },
    ventilated: null,
    mayBeCut: null,
  });
  k.space({
    id: 'BV2',
    name: 'Bathroom false ceiling',
    kind: 'ceiling',
    outline: outlineOf([3100, 4100], [5000, 4100], [5000, 6320], [3100, 6320]),
    bottom: ceiling('bathroom', 0),
    top: ceiling(FLAT, 0),
    joists: { ...battens, wayDeg: 0, first: { x: 3100, y: 4300 }, bottom: voidBottom('BV2', 13), spanMm: 1900 },
    ventilated: null,
    mayBeCut: null,
  });
  k.space({
    id: 'BV3',
    name: 'Floor and ceiling slabs of the building',
    kind: 'slab',
    outline: outlineOf([0, 0], [9000, 0], [9000, 6600], [0, 6600]),
    bottom: null,
    top: null,
    joists: null,
    ventilated: false,
    mayBeCut: false,
  });
}

/** Walls, rooms and spaces of the flat, with the ground below its north wall. */
export function flatBuilding(plan: Plan, k: HouseKit): void {
  walls(k);
  rooms(k);
  voids(k);
  const along = [-2500, 9000].map((x) => ({ x, y: 6600, z: -2900 }));
  plan.grounds['B-ground'] = { id: 'B-ground', line: along, kind: 'paved path', sureness: 'seen' };
}
