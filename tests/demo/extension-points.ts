import { tail } from '../../src/catalogue/tail.ts';
import { GROUND } from './extension-building.ts';
import { datum, floor, type HouseKit, onWall } from './house-kit.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });

function sources(k: HouseKit): void {
  k.point({
    id: 'D-GM',
    kind: 'gas-meter',
    name: 'Gas meter and emergency control',
    place: onWall('DS', 'right', 900, floor(GROUND, 150)),
    size: size(400, 220, 500),
    connections: [tail('outlet', 'gas', 'Outlet', '28', [0, 0, 300], 'back')],
  });
  k.point({
    id: 'D-ST',
    kind: 'stop-tap',
    name: 'Stop tap',
    place: onWall('DE', 'left', 7400, floor(GROUND, 300)),
    size: size(100, 180, 100),
    connections: [tail('out', 'cold', 'Cold main', '22', [0, 150, 100], 'up')],
    fields: { incoming: 'plastic' },
  });
}

/** Inside the front wall, on the pipe that comes through it. */
function bonding(k: HouseKit): void {
  k.point({
    id: 'D-MB',
    kind: 'bonding-clamp',
    name: 'Main bonding clamp',
    place: onWall('DS', 'left', 900, floor(GROUND, 420), 20),
    size: size(60, 60, 60),
    fields: { pipe: 'gas', conductorMm2: 10, fromMeterMm: 350, beforeBranch: true },
  });
}

function oldBoiler(k: HouseKit): void {
  k.point({
    id: 'D-EB',
    kind: 'boiler',
    name: 'Old combi',
    place: onWall('DE', 'left', 6500, floor(GROUND, 1300)),
    size: size(400, 330, 700),
    fields: { type: 'combi', class: '24', outputKw: 24 },
  });
  k.point({
    id: 'D-OT',
    kind: 'old-tails',
    name: 'Old boiler tails',
    place: onWall('DE', 'left', 6500, floor(GROUND, 90)),
    size: size(200, 300, 60),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '22', [-60, 40, 60], 'up'),
      tail('return', 'heatingReturn', 'Heating return', '22', [0, 270, 60], 'up'),
      tail('hot', 'hot', 'Hot', '15', [-60, 150, 60], 'up'),
      tail('cold', 'cold', 'Cold', '15', [60, 150, 60], 'up'),
    ],
    fields: { heatingKw: 14, litresBehind: 95 },
  });
}

function drains(k: HouseKit): void {
  k.point({
    id: 'D-FG',
    kind: 'gully',
    name: 'Foul gully by the old kitchen',
    place: { on: 'storey', x: 7125, y: 7300, angleDeg: 90, height: datum(-250) },
    size: size(250, 250, 100),
    connections: [tail('condensate', 'condensate', 'Condensate', '32', [100, -65, 150], 'up')],
    fields: { drains: 'foul', trapped: true },
  });
  k.point({
    id: 'D-RG',
    kind: 'gully',
    name: 'Rainwater gully',
    place: { on: 'storey', x: 7075, y: 14300, angleDeg: 90, height: datum(-250) },
    size: size(250, 250, 100),
    fields: { drains: 'surface' },
  });
  k.point({
    id: 'D-WM',
    kind: 'standpipe',
    name: 'Washing machine standpipe',
    place: onWall('DE', 'left', 7000, floor(GROUND, 100), 220),
    size: size(60, 60, 600),
    connections: [tail('in', 'condensate', 'Open end', '40', [0, 100, 650], 'up')],
  });
}

function around(k: HouseKit): void {
  k.point({
    id: 'D-BO',
    kind: 'boundary',
    name: 'East boundary fence',
    place: { on: 'storey', x: 8250, y: 7300, angleDeg: 270, height: datum(-150) },
    size: size(14600, 50, 1800),
    fields: { kind: 'fence' },
  });
  k.point({
    id: 'D-FC',
    kind: 'beam',
    name: 'Steel beam over the opening',
    place: { on: 'storey', x: 4400, y: 7923, angleDeg: 0, height: floor(GROUND, 2300) },
    size: size(3900, 146, 254),
    fields: { madeOf: 'steel', mayBeDrilled: false },
  });
}

/** What stands before the work, whatever is chosen. */
export function extensionSurvey(k: HouseKit): void {
  sources(k);
  bonding(k);
  oldBoiler(k);
  drains(k);
  around(k);
}
