import { tail } from '../../src/catalogue/tail.ts';
import { floor, type HouseKit, onWall } from './house-kit.ts';
import { FIRST, GROUND } from './semi-building.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });
const A = { option: 'A' };
const onFirst = (x: number, y: number) => ({ on: 'storey' as const, x, y, angleDeg: 270, height: floor(FIRST, 0) });

function vessels(k: HouseKit): void {
  k.point({
    id: 'A-CY',
    kind: 'cylinder',
    name: 'Main cylinder',
    storey: FIRST,
    place: onFirst(8000, 2700),
    size: size(550, 550, 1500),
    connections: [
      tail('coilFlow', 'heatingFlow', 'Coil flow', '22', [0, 550, 860], 'front'),
      tail('coilReturn', 'heatingReturn', 'Coil return', '22', [0, 550, 360], 'front'),
      tail('coldIn', 'preheated', 'Cold in, from the preheat vessel', '22', [-195, 470, 210], 'left'),
      tail('hotOut', 'hot', 'Hot out', '22', [0, 275, 1560], 'right'),
      tail('relief', 'discharge', 'Safety valve', '15', [-275, 275, 1275], 'left'),
    ],
    fields: { coilKw: 20, unvented: true, valveOutlet: 'G1/2' },
  });
  k.point({
    id: 'A-PV',
    kind: 'preheat-vessel',
    name: 'Preheat vessel',
    storey: FIRST,
    place: onFirst(7700, 3550),
    size: size(500, 500, 1000),
    connections: [
      tail('in', 'cold', 'Cold in', '22', [-250, 250, 160], 'left'),
      tail('out', 'preheated', 'Preheated out', '22', [0, 250, 1000], 'up'),
      tail('relief', 'discharge', 'Safety valve', '15', [0, 500, 980], 'front'),
    ],
    fields: {
      unvented: true,
      valveOutlet: 'G1/2',
      heatedBy: 'immersion heater on surplus electricity',
      hotC: 65,
      tundish: 'missing',
    },
  });
}

function safety(k: HouseKit): void {
  k.point({
    id: 'A-CG',
    kind: 'inlet-group',
    name: 'Cold inlet group',
    storey: FIRST,
    place: onWall('FE', 'left', 3300, floor(FIRST, 810)),
    size: size(160, 80, 300),
    connections: [
      tail('in', 'cold', 'Cold main in', '22', [0, 40, 0], 'down'),
      tail('out', 'cold', 'Cold to the vessel', '22', [0, 40, 300], 'up'),
      tail('balanced', 'balancedCold', 'Balanced cold', '22', [0, 40, 150], 'front'),
      tail('relief', 'discharge', 'Expansion relief', '15', [80, 40, 270], 'right'),
    ],
    fields: { setBar: 3, hasStrainer: true, hasCheck: true, hasRelief: true },
  });
  k.point({
    id: 'A-T1',
    kind: 'tundish',
    name: 'Tundish of the main cylinder',
    storey: FIRST,
    place: onWall('FE', 'left', 3050, floor(FIRST, 1100), 10),
    size: size(80, 60, 120),
    fields: { serves: 'Main cylinder' },
  });
  k.point({
    id: 'A-T2',
    kind: 'tundish',
    name: 'Tundish of the preheat vessel',
    storey: FIRST,
    place: onWall('FP8', 'right', 1300, floor(FIRST, 900), 30),
    size: size(80, 60, 60),
    fields: { serves: 'Preheat vessel' },
    ...A,
  });
  k.point({
    id: 'A-ZV',
    kind: 'zone-valves',
    name: 'Zone valves and heating tee',
    storey: FIRST,
    place: onWall('FP2', 'right', 6900, floor(FIRST, 660)),
    size: size(250, 100, 150),
    connections: [
      tail('in', 'heatingFlow', 'Flow in', '22', [0, 100, 0], 'right'),
      tail('heating', 'heatingFlow', 'To heating', '22', [-125, 50, 75], 'left'),
      tail('water', 'heatingFlow', 'To the cylinder', '22', [125, 50, 75], 'right'),
    ],
  });
}

/** Kept where it is: its hot comes a long way down from the cylinder, before and after alike. */
function sink(k: HouseKit): void {
  k.point({
    id: 'A-KS',
    kind: 'sink-taps',
    name: 'Kitchen sink',
    place: onWall('GN', 'right', 3600, floor(GROUND, 900)),
    size: size(180, 160, 200),
    connections: [
      tail('hot', 'hot', 'Hot', '15', [-50, 120, 0], 'down'),
      tail('cold', 'cold', 'Cold', '15', [50, 120, 0], 'down'),
    ],
    fields: { flowLPerMin: 6 },
  });
}

export function semiHotWater(k: HouseKit): void {
  vessels(k);
  safety(k);
  sink(k);
  k.point({
    id: 'A-SH',
    kind: 'shower-valve',
    name: 'En-suite shower',
    storey: FIRST,
    place: onWall('FP10', 'right', 1550, floor(FIRST, 1070)),
    size: size(300, 70, 60),
    connections: [
      tail('hot', 'hot', 'Hot', '15', [-75, -50, 30], 'down'),
      tail('cold', 'balancedCold', 'Cold', '15', [75, -50, 30], 'down'),
    ],
    fields: { thermostatic: true },
    ...A,
  });
}
