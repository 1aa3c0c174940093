import { beside, copper, floor, type HouseKit, voidBottom } from './house-kit.ts';
import { FIRST, FLOOR_VOID } from './two-storey-building.ts';
import { COLD_TEE, GAS_TEE, HOT_JOIN, middle } from './two-storey-old-runs.ts';

type Pair = readonly [number, number];
/** Between two joists and below the middle, so that what crosses at the middle passes over. */
const lower = (at: Pair) => ({ at, storey: FIRST, height: voidBottom(FLOOR_VOID, 35) });
const boiler = (connection: string) => ({ point: 'new-boiler', connection });

function gas(k: HouseKit): void {
  k.run({
    id: 'gas-new',
    service: 'gas',
    name: 'Gas to the new boiler',
    joining: 'endFeed',
    tube: copper('22x0.9'),
    corners: [{ node: GAS_TEE }, middle([6000, 700]), middle([6000, 3480]), middle([6839, 3480]), boiler('gas')],
  });
}

function heating(k: HouseKit): void {
  const along = (id: 'flow' | 'return', service: string, name: string, y: number) =>
    k.run({
      id,
      service,
      name,
      joining: 'endFeed',
      tube: copper('22x0.9'),
      corners: [boiler(id), lower([6839, y]), lower([3900, y]), { point: 'old-tails', connection: id }],
    });
  along('flow', 'heatingFlow', 'Heating flow', 3600);
  along('return', 'heatingReturn', 'Heating return', 3360);
}

function water(k: HouseKit): void {
  k.run({
    id: 'hot',
    service: 'hot',
    name: 'Hot to the old pipe in the kitchen',
    joining: 'endFeed',
    tube: copper('15x0.7'),
    corners: [boiler('hot'), lower([6839, 3540]), lower([3900, 3540]), { node: HOT_JOIN }],
  });
  k.run({
    id: 'cold',
    service: 'cold',
    name: 'Cold to the boiler',
    joining: 'endFeed',
    tube: copper('22x0.9'),
    tubes: { 5: copper('15x0.7') },
    corners: [
      { node: COLD_TEE },
      middle([500, 5600]),
      middle([5000, 5600]),
      middle([5000, 3420]),
      lower([5000, 3420]),
      lower([6839, 3420]),
      boiler('cold'),
    ],
  });
}

function drains(k: HouseKit): void {
  k.run({
    id: 'condensate',
    service: 'condensate',
    name: 'Condensate to the soil stack',
    joining: 'solvent',
    turns: 'bend',
    tube: { kind: 'plastic-overflow', size: '21.5' },
    corners: [
      boiler('condensate'),
      { at: [6740, 3324], storey: FIRST, height: floor(FIRST, 360) },
      { point: 'soil-stack', connection: 'in' },
    ],
  });
  k.run({
    id: 'relief',
    service: 'boilerRelief',
    name: 'Relief to low level outside',
    joining: 'compression',
    tube: copper('15x0.7'),
    corners: [
      boiler('relief'),
      { at: [6839, 3296], storey: FIRST, height: beside('new-boiler', 'relief', -60) },
      { at: [7230, 3296], storey: FIRST, height: beside('new-boiler', 'relief', -70) },
      { point: 'relief-end', connection: 'in' },
    ],
  });
}

export function twoStoreyRuns(k: HouseKit): void {
  gas(k);
  heating(k);
  water(k);
  drains(k);
}
