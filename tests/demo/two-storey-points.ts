import { tail } from '../../src/catalogue/tail.ts';
import { datum, floor, type HouseKit, onWall } from './house-kit.ts';
import { FIRST, GROUND } from './two-storey-building.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });
const A = { option: 'A' };

function sources(k: HouseKit): void {
  k.point({
    id: 'meter',
    kind: 'gas-meter',
    name: 'Gas meter',
    place: onWall('GE', 'left', 700, floor(GROUND, 400)),
    size: size(300, 230, 400),
    connections: [tail('outlet', 'gas', 'Outlet', '22', [0, 115, 400], 'up')],
    fields: { ratedM3PerH: 6 },
  });
  k.point({
    id: 'stop-tap',
    kind: 'stop-tap',
    name: 'Stop tap',
    place: onWall('GN', 'right', 500, floor(GROUND, 300)),
    size: size(100, 180, 100),
    connections: [tail('out', 'cold', 'Cold main', '22', [0, 120, 100], 'up')],
    fields: { standingBar: 3.2, workingBar: 2.4, flowLPerMin: 18, turns: true },
  });
  k.point({
    id: 'consumer-unit',
    kind: 'consumer-unit',
    name: 'Consumer unit',
    place: onWall('GP1', 'right', 700, floor(GROUND, 1800)),
    size: size(350, 110, 250),
    fields: { spareWay: true },
  });
}

function boilers(k: HouseKit): void {
  k.point({
    id: 'old-boiler',
    kind: 'boiler',
    name: 'Old boiler',
    place: onWall('GN', 'right', 3200, floor(GROUND, 1400)),
    size: size(400, 300, 700),
    fields: { type: 'combi', class: '24' },
  });
  k.point({
    id: 'old-flue',
    kind: 'flue-terminal',
    name: 'Old flue terminal',
    place: onWall('GN', 'left', 3200, floor(GROUND, 2150)),
    size: size(100, 100, 100),
    fields: { serves: 'Old boiler' },
  });
  k.point({
    id: 'new-boiler',
    kind: 'boiler',
    name: 'New boiler',
    storey: FIRST,
    place: onWall('FE', 'left', 3480, floor(FIRST, 900)),
    size: size(400, 300, 700),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '22', [-120, 81, 0], 'down'),
      tail('hot', 'hot', 'Hot', '15', [-60, 81, 0], 'down'),
      tail('gas', 'gas', 'Gas', '22', [0, 81, 0], 'down'),
      tail('cold', 'cold', 'Cold', '15', [60, 81, 0], 'down'),
      tail('return', 'heatingReturn', 'Heating return', '22', [120, 81, 0], 'down'),
      tail('condensate', 'condensate', 'Condensate', '21.5', [156, 180, 0], 'down'),
      tail('relief', 'boilerRelief', 'Relief', '15', [184, 81, 0], 'down'),
    ],
    fields: {
      type: 'combi',
      inputKwHeating: 24.5,
      inputKwHotWater: 30.6,
      inputBasis: 'gross',
      hotLPerMin: 12,
      waterLitres: 2,
      vesselLitres: 8,
    },
    ...A,
  });
  k.point({
    id: 'new-flue',
    kind: 'flue-terminal',
    name: 'New flue terminal',
    storey: FIRST,
    place: onWall('FE', 'right', 3480, floor(FIRST, 1650)),
    size: size(100, 100, 100),
    fields: { serves: 'New boiler', aboveGroundMm: 4500 },
    ...A,
  });
  k.point({
    id: 'boundary',
    kind: 'boundary',
    name: 'Fence of the side path',
    place: { on: 'storey', x: 8400, y: 3000, angleDeg: 270, height: datum(-150) },
    size: size(6000, 50, 1800),
    fields: { kind: 'fence' },
  });
}

function drains(k: HouseKit): void {
  k.point({
    id: 'soil-stack',
    kind: 'soil-stack',
    name: 'Soil stack',
    storey: FIRST,
    place: onWall('FE', 'left', 5600, floor(FIRST, 0), 125),
    size: size(110, 110, 2350),
    connections: [tail('in', 'condensate', 'Boss', '32', [55, 55, 250], 'right')],
    fields: { outside: false },
  });
  k.point({
    id: 'relief-end',
    kind: 'outside-end',
    name: 'End of the relief',
    place: onWall('GE', 'right', 3296, floor(GROUND, 90)),
    size: size(60, 60, 60),
    connections: [tail('in', 'boilerRelief', 'Open end', '15', [0, 30, 60], 'up')],
    fields: { ends: 'turnedBack', aboveGroundMm: 300, sharedGround: false },
    ...A,
  });
}

function taps(k: HouseKit): void {
  k.point({
    id: 'hob',
    kind: 'hob',
    name: 'Hob',
    place: onWall('GP1', 'left', 3900, floor(GROUND, 900)),
    size: size(580, 510, 60),
    fields: { inputKw: 7, inputBasis: 'gross' },
  });
  k.point({
    id: 'old-tails',
    kind: 'old-tails',
    name: 'Old tails below the kitchen ceiling',
    place: onWall('GP1', 'left', 3200, floor(GROUND, 2200)),
    size: size(300, 100, 100),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '22', [-120, 50, 100], 'up'),
      tail('return', 'heatingReturn', 'Heating return', '22', [120, 50, 100], 'up'),
    ],
    fields: { heatingKw: 9, litresBehind: 75 },
  });
  const tap = (id: string, kind: string, name: string, storey: string, place: ReturnType<typeof onWall>) =>
    k.point({ id, kind, name, storey, place, size: size(250, 150, 200) });
  tap('sink-taps', 'sink-taps', 'Kitchen sink taps', GROUND, onWall('GN', 'right', 1750, floor(GROUND, 900), 350));
  tap('bath-taps', 'bath-taps', 'Bath taps', FIRST, onWall('FE', 'left', 4700, floor(FIRST, 550)));
  tap('basin-taps', 'basin-taps', 'Basin taps', FIRST, onWall('FP3', 'left', 1600, floor(FIRST, 800), 200));
}

export function twoStoreyPoints(k: HouseKit): void {
  sources(k);
  boilers(k);
  drains(k);
  taps(k);
}
