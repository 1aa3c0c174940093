import { FLAT } from './flat-building.ts';
import { beside, ceiling, copper, floor, type HouseKit } from './house-kit.ts';

type Pair = readonly [number, number];
const up = (at: Pair) => ({ at, height: ceiling(FLAT, -80) });
const low = (at: Pair, mm: number) => ({ at, height: floor(FLAT, mm) });
const boiler = (connection: string) => ({ point: 'B-NB', connection });
const tails = (connection: string) => ({ point: 'B-OT', connection });
const HOB_TEE = 'B-hob-tee';

function gas(k: HouseKit): void {
  k.run({
    id: 'B-g1',
    service: 'gas',
    name: 'Gas from the meter to the hob tee',
    joining: 'endFeed',
    tube: copper('28x0.9'),
    corners: [
      { point: 'B-GM', connection: 'outlet' },
      up([8500, 2300]),
      up([8500, 3950]),
      up([400, 3950]),
      { ...up([400, 5200]), name: HOB_TEE },
    ],
  });
  k.run({
    id: 'B-g2',
    service: 'gas',
    name: 'Gas from the hob tee to the boiler',
    joining: 'endFeed',
    tube: copper('22x0.9'),
    corners: [
      { node: HOB_TEE },
      up([400, 6290]),
      { at: [400, 6290], height: beside('B-NB', 'gas', -80) },
      { at: [800, 6290], height: beside('B-NB', 'gas', -80) },
      boiler('gas'),
    ],
  });
  k.run({
    id: 'B-g3',
    service: 'gas',
    name: 'Gas to the hob',
    joining: 'endFeed',
    tube: copper('15x0.7'),
    corners: [
      { node: HOB_TEE },
      { at: [400, 5200], height: beside('B-HB', 'gas', 0) },
      { point: 'B-HB', connection: 'gas' },
    ],
  });
}

function heating(k: HouseKit): void {
  k.run({
    id: 'B-f1',
    service: 'heatingFlow',
    name: 'Heating flow',
    joining: 'endFeed',
    tube: copper('22x0.9'),
    corners: [boiler('flow'), low([680, 6240], 150), low([5150, 6240], 150), tails('flow')],
  });
  k.run({
    id: 'B-r1',
    service: 'heatingReturn',
    name: 'Heating return',
    joining: 'endFeed',
    tube: copper('22x0.9'),
    corners: [boiler('return'), low([920, 6240], 210), low([5210, 6240], 210), tails('return')],
  });
}

function water(k: HouseKit): void {
  k.run({
    id: 'B-h1',
    service: 'hot',
    name: 'Hot to the old tails',
    joining: 'endFeed',
    tube: copper('15x0.7'),
    corners: [boiler('hot'), low([740, 6180], 270), low([5130, 6180], 270), tails('hot')],
  });
  k.run({
    id: 'B-c1',
    service: 'cold',
    name: 'Cold to the boiler',
    joining: 'endFeed',
    tube: copper('22x0.9'),
    tubes: { 1: copper('15x0.7') },
    corners: [{ point: 'B-ST', connection: 'out' }, low([860, 6250], 400), boiler('cold')],
  });
}

function drains(k: HouseKit): void {
  k.run({
    id: 'B-k1',
    service: 'condensate',
    name: 'Condensate to the sink waste',
    joining: 'solvent',
    turns: 'bend',
    tube: { kind: 'plastic-overflow', size: '21.5' },
    corners: [boiler('condensate'), low([970, 6180], 700), { point: 'B-SW', connection: 'in' }],
  });
  k.run({
    id: 'B-p1',
    service: 'boilerRelief',
    name: 'Relief down the outside wall',
    joining: 'compression',
    tube: copper('15x0.7'),
    corners: [
      boiler('relief'),
      { at: [1030, 6640], height: beside('B-NB', 'relief', -10) },
      { point: 'B-PE', connection: 'in' },
    ],
  });
}

export function flatRuns(k: HouseKit): void {
  gas(k);
  heating(k);
  water(k);
  drains(k);
}
