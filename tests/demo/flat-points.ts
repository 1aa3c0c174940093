import { tail } from '../../src/catalogue/tail.ts';
import { FLAT } from './flat-building.ts';
import { datum, floor, type HouseKit, onWall } from './house-kit.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });
const A = { option: 'A' };
/** Wanted round the new combi by its sheet. */
const CLEAR = { clearFrontMm: 600, clearSidesMm: 5, clearAboveMm: 200, clearBelowMm: 200 };

function gasAndPower(k: HouseKit): void {
  k.point({
    id: 'B-GM',
    kind: 'gas-meter',
    name: 'Gas meter and emergency control',
    place: onWall('BE', 'left', 2300, floor(FLAT, 280)),
    size: size(220, 330, 220),
    connections: [tail('outlet', 'gas', 'Outlet', '28', [0, 250, 220], 'up')],
  });
  k.point({
    id: 'B-CU',
    kind: 'consumer-unit',
    name: 'Consumer unit',
    place: onWall('BP9', 'right', 150, floor(FLAT, 1700)),
    size: size(200, 85, 240),
  });
  k.point({
    id: 'B-MB',
    kind: 'bonding-clamp',
    name: 'Main bonding clamp',
    place: onWall('BE', 'left', 2300, floor(FLAT, 870), 220),
    size: size(60, 60, 60),
    fields: { pipe: 'gas', conductorMm2: 6, fromMeterMm: 400 },
  });
  k.point({
    id: 'B-HB',
    kind: 'hob',
    name: 'Hob',
    place: onWall('BW', 'right', 5200, floor(FLAT, 900)),
    size: size(580, 600, 50),
    connections: [tail('gas', 'gas', 'Gas', '15', [0, 300, 0], 'back')],
    fields: { inputKw: 7.5, inputBasis: 'gross' },
  });
}

function boilers(k: HouseKit): void {
  k.point({
    id: 'B-EB',
    kind: 'boiler',
    name: 'Old combi',
    place: onWall('BP5', 'right', 350, floor(FLAT, 1300)),
    size: size(400, 250, 700),
    fields: { type: 'combi', class: '24' },
  });
  k.point({
    id: 'B-EF',
    kind: 'flue-terminal',
    name: 'Old flue terminal',
    place: onWall('BN', 'left', 4000, floor(FLAT, 2350)),
    size: size(100, 100, 100),
    fields: { serves: 'Old combi', hiddenLengthM: 3.4, inspectable: false },
  });
  k.point({
    id: 'B-NB',
    kind: 'boiler',
    name: 'New combi',
    place: onWall('BN', 'right', 800, floor(FLAT, 1300)),
    size: size(400, 300, 700),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '22', [-120, 80, -40], 'down'),
      tail('hot', 'hot', 'Hot', '15', [-60, 140, -40], 'down'),
      tail('gas', 'gas', 'Gas', '22', [0, 30, -40], 'down'),
      tail('cold', 'cold', 'Cold', '15', [60, 70, -40], 'down'),
      tail('return', 'heatingReturn', 'Heating return', '22', [120, 80, -40], 'down'),
      tail('condensate', 'condensate', 'Condensate', '21.5', [170, 140, -50], 'down'),
      tail('relief', 'boilerRelief', 'Relief', '15', [230, 140, -50], 'back'),
    ],
    fields: {
      type: 'combi',
      inputKwHotWater: 31.8,
      inputBasis: 'gross',
      outputKw: 28,
      hotLPerMin: 11.4,
      hotRiseK: 35,
      hotLeastBar: 0.8,
      pumpHeadLeftKPa: 20,
      waterLitres: 2,
      vesselLitres: 8,
      ...CLEAR,
      flueMaxM: 9,
      flueBend90M: 1,
      flueBend45M: 0.5,
    },
    ...A,
  });
  k.point({
    id: 'B-NF',
    kind: 'flue-terminal',
    name: 'New flue terminal',
    place: onWall('BN', 'left', 800, floor(FLAT, 2100)),
    size: size(100, 100, 100),
    fields: { serves: 'New combi', aboveGroundMm: 5050 },
    ...A,
  });
}

function alarm(k: HouseKit): void {
  k.point({
    id: 'B-AL',
    kind: 'co-alarm',
    name: 'New carbon monoxide alarm',
    place: onWall('BP1', 'left', 600, floor(FLAT, 2130)),
    size: size(120, 40, 80),
    fields: { on: 'wall' },
    ...A,
  });
}

function outside(k: HouseKit): void {
  k.point({
    id: 'B-NW1',
    kind: 'neighbour-window',
    name: 'Kitchen window of the next flat',
    place: { on: 'storey', x: -1850, y: 6600, angleDeg: 180, height: floor(FLAT, 1050) },
    size: size(1200, 50, 1050),
  });
  k.point({
    id: 'B-NW2',
    kind: 'neighbour-window',
    name: 'Kitchen window upstairs',
    place: onWall('BN', 'left', 2100, datum(3770)),
    size: size(1200, 50, 1050),
  });
  k.point({
    id: 'B-RW',
    kind: 'rainwater-pipe',
    name: 'Rainwater pipe',
    place: onWall('BN', 'left', 350, datum(-2900)),
    size: size(68, 68, 5400),
  });
  k.point({
    id: 'B-PE',
    kind: 'outside-end',
    name: 'End of the relief above the path',
    place: onWall('BN', 'left', 1030, datum(-2860)),
    size: size(60, 60, 60),
    connections: [tail('in', 'boilerRelief', 'Open end', '15', [0, 40, 60], 'up')],
    fields: { ends: 'lowLevel', sharedGround: true },
    ...A,
  });
}

function water(k: HouseKit): void {
  k.point({
    id: 'B-ST',
    kind: 'stop-tap',
    name: 'Stop tap',
    place: onWall('BN', 'right', 2300, floor(FLAT, 300)),
    size: size(100, 140, 100),
    connections: [tail('out', 'cold', 'Cold main', '22', [0, 70, 100], 'left')],
  });
  k.point({
    id: 'B-KS',
    kind: 'sink-taps',
    name: 'Kitchen sink taps',
    place: onWall('BN', 'right', 2100, floor(FLAT, 850)),
    size: size(180, 160, 200),
    connections: [
      tail('hot', 'hot', 'Hot', '15', [-50, 120, 0], 'down'),
      tail('cold', 'cold', 'Cold', '15', [50, 120, 0], 'down'),
    ],
  });
  k.point({
    id: 'B-SW',
    kind: 'sink-waste',
    name: 'Sink waste',
    place: onWall('BN', 'right', 1950, floor(FLAT, 640)),
    size: size(120, 240, 200),
    connections: [tail('in', 'condensate', 'Above the trap', '21.5', [0, 140, 15], 'left')],
    fields: { aboveTrap: true },
  });
  k.point({
    id: 'B-OT',
    kind: 'old-tails',
    name: 'Old boiler tails',
    place: onWall('BP5', 'right', 500, floor(FLAT, 150)),
    size: size(120, 130, 140),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '22', [40, 50, 0], 'right'),
      tail('return', 'heatingReturn', 'Heating return', '22', [40, 110, 60], 'right'),
      tail('hot', 'hot', 'Hot', '15', [0, 30, 120], 'right'),
      tail('cold', 'cold', 'Cold', '15', [0, 70, 120], 'right'),
    ],
    fields: { heatingKw: 7, litresBehind: 60 },
  });
  const mixer = (depth: number) => [
    tail('hot', 'hot', 'Hot', '15', [-75, depth, 0], 'down'),
    tail('cold', 'cold', 'Cold', '15', [75, depth, 0], 'down'),
  ];
  const tap = (id: string, kind: string, name: string, place: ReturnType<typeof onWall>, of: ReturnType<typeof size>) =>
    k.point({ id, kind, name, place, size: of, connections: mixer(of.depthMm / 2) });
  tap('B-BT', 'bath-taps', 'Bath taps', onWall('BN', 'right', 3500, floor(FLAT, 550)), size(200, 340, 150));
  tap('B-SH', 'shower-valve', 'Shower valve', onWall('BP4', 'right', 1500, floor(FLAT, 1200)), size(250, 80, 100));
  tap('B-BA', 'basin-taps', 'Basin taps', onWall('BP5', 'left', 200, floor(FLAT, 800)), size(180, 400, 150));
  k.point({
    id: 'B-SS',
    kind: 'soil-stack',
    name: 'Soil stack in duct',
    place: onWall('BP4', 'right', 150, floor(FLAT, 0), 45),
    size: size(110, 110, 2500),
  });
}

export function flatPoints(k: HouseKit): void {
  gasAndPower(k);
  boilers(k);
  alarm(k);
  outside(k);
  water(k);
}
