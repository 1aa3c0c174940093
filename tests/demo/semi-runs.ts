import { type Corner, copper, type HouseKit, type RunTold, type StretchTold } from './house-kit.ts';
import { semiHeight } from './semi-floors.ts';

type Place = readonly [x: number, y: number, z: number];
export const GAS_TEE = 'A-GT';
const COCK = 'A-DC-end';

const to = ([x, y, z]: Place): Corner => ({ at: [x, y], ...semiHeight(y, z) });
const at = (point: string, connection: string) => ({ point, connection });
const boiler = (connection: string) => at('A-NB', connection);
const tee: Corner = { name: GAS_TEE, ...to([7985, 4300, 2515]) };

function unseen(id: string, from: Corner, end: Corner, lengthMm: Pair, bends: Pair, size: string | null): StretchTold {
  return { id, from, to: end, lengthMm, bends, tube: copper(size) };
}
type Pair = readonly [number, number];

/** Pipe that is there: what was looked at as legs, what lies behind plaster and boards as stretches. */
function old(k: HouseKit): void {
  const told = (id: string, service: string, name: string) => ({ id, service, name, joining: 'endFeed' as const });
  const way = [at('A-GM', 'outlet'), to([7985, 900, 700]), to([7985, 900, 2515]), tee];
  k.run({ ...told('A-g0', 'gas', 'Gas as it is'), tube: copper('22x0.9'), corners: way }, null);
  k.unseen('A-g0', [
    unseen('A-g0-hob', { node: GAS_TEE }, at('A-HB', 'gas'), [7500, 9500], [3, 7], null),
    unseen('A-g0-boiler', { node: GAS_TEE }, at('A-EB', 'gas'), [8500, 11000], [3, 7], null),
  ]);
  const hidden = (id: string, service: string, name: string, tube: string, stretches: readonly StretchTold[]) => {
    k.run({ ...told(id, service, name), tube: copper(tube), corners: [] }, null);
    k.unseen(id, stretches);
  };
  hidden('A-f0', 'heatingFlow', 'Flow as it is', '22x0.9', [
    unseen('A-f0-old', at('A-EB', 'flow'), at('A-ZV', 'in'), [8000, 11000], [5, 9], '22x0.9'),
    unseen('A-f0-coil', at('A-ZV', 'water'), at('A-CY', 'coilFlow'), [1200, 2200], [3, 5], '22x0.9'),
    unseen(
      'A-f0-heating',
      at('A-ZV', 'heating'),
      { name: COCK, ...at('A-HC', 'join') },
      [8000, 11000],
      [4, 9],
      '22x0.9',
    ),
  ]);
  hidden('A-c0', 'cold', 'Cold as it is', '22x0.9', [
    unseen('A-c0-main', at('A-ST', 'out'), at('A-CG', 'in'), [9000, 11500], [5, 9], '22x0.9'),
    unseen('A-c0-sink', at('A-ST', 'out'), at('A-KS', 'cold'), [2200, 3500], [3, 5], '15x0.7'),
    unseen('A-c0-vessel', at('A-CG', 'out'), at('A-PV', 'in'), [1200, 2200], [3, 5], '22x0.9'),
  ]);
  hidden('A-w0', 'preheated', 'Preheated as it is', '22x0.9', [
    unseen('A-w0-cylinder', at('A-PV', 'out'), at('A-CY', 'coldIn'), [1500, 2600], [3, 5], '22x0.9'),
  ]);
  hidden('A-h0', 'hot', 'Hot as it is', '15x0.7', [
    unseen('A-h0-sink', at('A-CY', 'hotOut'), at('A-KS', 'hot'), [10000, 13000], [6, 9], '15x0.7'),
  ]);
  hidden('A-e0', 'discharge', 'D1, main cylinder and inlet group', '15x0.7', [
    unseen('A-e0-cylinder', at('A-CY', 'relief'), at('A-T1', 'in'), [400, 550], [1, 2], '15x0.7'),
    unseen('A-e0-group', at('A-CG', 'relief'), at('A-T1', 'in'), [200, 500], [1, 3], '15x0.7'),
  ]);
}

type Told = Pick<RunTold, 'id' | 'service' | 'name' | 'tube' | 'corners'> & Partial<RunTold>;

function fresh(k: HouseKit): void {
  const run = (told: Told) => k.run({ joining: 'endFeed', ...told });
  run({
    id: 'A-g2',
    service: 'gas',
    name: 'Gas to the new boiler',
    tube: copper('22x0.9'),
    corners: [
      { node: GAS_TEE },
      to([7985, 4300, 2760]),
      to([8060, 4300, 2760]),
      to([8060, 5200, 2760]),
      to([8060, 5200, 3850]),
      boiler('gas'),
    ],
  });
  run({
    id: 'A-f1',
    service: 'heatingFlow',
    name: 'Heating flow',
    tube: copper('28x0.9'),
    corners: [
      boiler('flow'),
      to([7985, 5330, 2575]),
      to([7720, 5330, 2575]),
      to([7720, 3950, 2575]),
      to([7720, 3950, 3300]),
      at('A-ZV', 'in'),
    ],
  });
  run({
    id: 'A-r1',
    service: 'heatingReturn',
    name: 'Heating return',
    tube: copper('28x0.9'),
    corners: [
      boiler('return'),
      to([7985, 5070, 2540]),
      to([7790, 5070, 2540]),
      to([7790, 3880, 2540]),
      to([7790, 3880, 3100]),
      to([7150, 3880, 3100]),
    ],
  });
  run({
    id: 'A-h1',
    service: 'hot',
    name: 'Hot to the en-suite shower',
    tube: copper('15x0.7'),
    corners: [
      at('A-CY', 'hotOut'),
      to([7725, 2340, 4200]),
      to([7725, 2340, 2575]),
      to([7725, 1950, 2575]),
      at('A-SH', 'hot'),
    ],
  });
  run({
    id: 'A-c1',
    service: 'balancedCold',
    name: 'Balanced cold to the en-suite shower',
    tube: copper('15x0.7'),
    corners: [
      at('A-CG', 'balanced'),
      to([7875, 3300, 3600]),
      to([7875, 3300, 2540]),
      to([7875, 1950, 2540]),
      at('A-SH', 'cold'),
    ],
  });
}

function drains(k: HouseKit): void {
  const run = (told: Told) => k.run({ joining: 'compression', ...told });
  run({
    id: 'A-k1',
    service: 'condensate',
    name: 'Condensate to the standpipe',
    joining: 'solvent',
    turns: 'bend',
    tube: { kind: 'plastic-overflow', size: '21.5' },
    corners: [boiler('condensate'), to([7985, 5480, 2576]), to([7985, 6600, 2525]), at('A-SP', 'in')],
  });
  run({
    id: 'A-p1',
    service: 'boilerRelief',
    name: 'Relief to low level outside',
    tube: copper('15x0.7'),
    corners: [boiler('relief'), to([8480, 5560, 3840]), at('A-PE', 'in')],
  });
  run({
    id: 'A-d1',
    service: 'discharge',
    name: 'D2, main cylinder',
    tube: copper('22x0.9'),
    corners: [at('A-T1', 'out'), to([8060, 3050, 3340]), to([8460, 3050, 3336]), at('A-E1', 'in')],
  });
  run({
    id: 'A-e2',
    service: 'discharge',
    name: 'D1, preheat vessel',
    tube: copper('15x0.7'),
    corners: [at('A-PV', 'relief'), to([7060, 3550, 3615]), at('A-T2', 'in')],
  });
  run({
    id: 'A-d2',
    service: 'discharge',
    name: 'D2, preheat vessel',
    tube: copper('22x0.9'),
    corners: [
      at('A-T2', 'out'),
      to([7060, 3550, 3200]),
      to([7060, 3250, 3198]),
      to([8460, 3250, 3190]),
      at('A-E2', 'in'),
    ],
  });
}

export const DRAIN_COCK_NODE = COCK;
export function semiRuns(k: HouseKit): void {
  old(k);
  fresh(k);
  drains(k);
}
