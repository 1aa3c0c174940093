import { tail } from '../../src/catalogue/tail.ts';
import { datum, floor, type HouseKit, onWall } from './house-kit.ts';
import { FIRST, GROUND } from './semi-building.ts';
import { semiHotWater } from './semi-hot-water.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });
const A = { option: 'A' };
/** Wanted round the new boiler by its sheet. */
const CLEAR = { clearFrontMm: 600, clearSidesMm: 5, clearAboveMm: 200, clearBelowMm: 200 };

function sources(k: HouseKit): void {
  k.point({
    id: 'A-GM',
    kind: 'gas-meter',
    name: 'Gas meter and emergency control',
    place: onWall('GE', 'right', 900, floor(GROUND, 400)),
    size: size(400, 220, 500),
    connections: [tail('outlet', 'gas', 'Outlet', '22', [0, 0, 300], 'back')],
  });
  k.point({
    id: 'A-MB',
    kind: 'bonding-clamp',
    name: 'Main bonding clamp',
    place: onWall('GE', 'left', 900, floor(GROUND, 670), 70),
    size: size(60, 60, 60),
    fields: { pipe: 'gas', conductorMm2: 10, fromMeterMm: 400 },
  });
  k.point({
    id: 'A-ST',
    kind: 'stop-tap',
    name: 'Stop tap',
    place: onWall('GN', 'right', 5600, floor(GROUND, 300)),
    size: size(100, 140, 100),
    connections: [tail('out', 'cold', 'Cold main', '22', [0, 120, 50], 'left')],
    fields: { incoming: 'plastic' },
  });
  k.point({
    id: 'A-HB',
    kind: 'hob',
    name: 'Hob',
    place: onWall('GN', 'right', 4600, floor(GROUND, 900)),
    size: size(580, 510, 60),
    connections: [tail('gas', 'gas', 'Gas', '15', [0, 80, 0], 'down')],
    fields: { inputKw: 8, inputBasis: 'gross' },
  });
}

function boilers(k: HouseKit): void {
  k.point({
    id: 'A-EB',
    kind: 'boiler',
    name: 'Old system boiler',
    place: onWall('GN', 'right', 2700, floor(GROUND, 1350)),
    size: size(400, 300, 700),
    fields: { type: 'system', class: '24', outputKw: 24 },
  });
  k.point({
    id: 'A-EF',
    kind: 'flue-terminal',
    name: 'Old flue terminal',
    place: onWall('GN', 'left', 2700, floor(GROUND, 2000)),
    size: size(100, 100, 100),
    fields: { serves: 'Old system boiler' },
  });
  k.point({
    id: 'A-NB',
    kind: 'boiler',
    name: 'New system boiler',
    storey: FIRST,
    place: onWall('FE', 'left', 5250, floor(FIRST, 1350)),
    size: size(440, 330, 720),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '28', [-80, 115, -140], 'down'),
      tail('gas', 'gas', 'Gas', '22', [50, 115, -140], 'back'),
      tail('return', 'heatingReturn', 'Heating return', '28', [180, 115, -140], 'down'),
      tail('condensate', 'condensate', 'Condensate', '21.5', [-230, 115, -150], 'down'),
      tail('relief', 'boilerRelief', 'Relief', '15', [-310, 115, -140], 'back'),
    ],
    fields: {
      type: 'system',
      inputKwHeating: 34,
      inputBasis: 'gross',
      outputKw: 30,
      pumpHeadLeftKPa: 24,
      waterLitres: 3,
      vesselLitres: 12,
      ...CLEAR,
      flueMaxM: 8,
      flueBend90M: 1,
      flueBend45M: 0.5,
    },
    ...A,
  });
  k.point({
    id: 'A-NF',
    kind: 'flue-terminal',
    name: 'New flue terminal',
    storey: FIRST,
    place: onWall('FE', 'right', 5250, floor(FIRST, 2160)),
    size: size(100, 100, 100),
    fields: { serves: 'New system boiler', aboveGroundMm: 4850 },
    ...A,
  });
}

/** On the wall across the linen room from the new boiler. */
function alarm(k: HouseKit): void {
  k.point({
    id: 'A-AL',
    kind: 'co-alarm',
    name: 'New carbon monoxide alarm',
    storey: FIRST,
    place: onWall('FP6', 'right', 1100, floor(FIRST, 2130)),
    size: size(120, 40, 80),
    fields: { on: 'wall' },
    ...A,
  });
}

function outside(k: HouseKit): void {
  k.point({
    id: 'A-GY',
    kind: 'gully',
    name: 'Gully of the side path',
    place: { on: 'storey', x: 8400, y: 3150, angleDeg: 90, height: datum(-100) },
    size: size(300, 120, 100),
    fields: { trapped: true },
  });
  k.point({
    id: 'A-BO',
    kind: 'boundary',
    name: 'Fence of the side path',
    place: { on: 'storey', x: 9450, y: 3600, angleDeg: 270, height: datum(0) },
    size: size(7200, 50, 1800),
    fields: { kind: 'fence' },
  });
  k.point({
    id: 'A-NW',
    kind: 'neighbour-window',
    name: 'Bathroom window of the next house',
    storey: FIRST,
    place: { on: 'storey', x: 10750, y: 5900, angleDeg: 270, height: datum(3800) },
    size: size(600, 50, 900),
  });
  const end = (id: string, name: string, service: string, tube: string, y: number, z: number, off: number) =>
    k.point({
      id,
      kind: 'outside-end',
      name,
      place: onWall('GE', 'right', y, floor(GROUND, z - 60)),
      size: size(60, 60, 60),
      connections: [tail('in', service, 'Open end', tube, [0, off, 60], 'up')],
      fields: { ends: 'lowLevel', sharedGround: false },
      ...A,
    });
  end('A-PE', 'End of the relief', 'boilerRelief', '15', 5560, 150, 80);
  end('A-E1', 'End of D2, main cylinder', 'discharge', '22', 3050, 100, 60);
  end('A-E2', 'End of D2, preheat vessel', 'discharge', '22', 3250, 100, 60);
}

function drains(k: HouseKit): void {
  k.point({
    id: 'A-SP',
    kind: 'standpipe',
    name: 'Washing machine standpipe',
    place: onWall('GE', 'left', 6600, floor(GROUND, 300), 85),
    size: size(60, 60, 600),
    connections: [tail('in', 'condensate', 'Open end', '40', [0, 30, 600], 'up')],
  });
  k.point({
    id: 'A-SC',
    kind: 'soil-stack',
    name: 'Soil and vent stack',
    place: onWall('GW', 'right', 6800, floor(GROUND, 0), 25),
    size: size(110, 110, 5040),
    fields: { outside: false },
  });
}

/** The heating circuit that is kept, as far as its lowest radiator. */
function heating(k: HouseKit): void {
  k.point({
    id: 'A-HC',
    kind: 'join-point',
    name: 'Heating circuit that is kept',
    place: { on: 'storey', x: 2300, y: 3900, angleDeg: 0, height: floor(GROUND, 90) },
    size: size(60, 60, 60),
    connections: [tail('join', 'heatingFlow', 'Join', '22', [0, 0, 30], 'front')],
    fields: { service: 'heatingFlow', part: 'end', size: '22', heatingKw: 18 },
  });
}

export function semiPoints(k: HouseKit): void {
  sources(k);
  boilers(k);
  alarm(k);
  semiHotWater(k);
  heating(k);
  outside(k);
  drains(k);
}
