import { tail } from '../../src/catalogue/tail.ts';
import type { Leg } from '../../src/plan/records/pipework.ts';
import { extensionHeight } from './extension-floors.ts';
import { extensionNewPoints } from './extension-new-points.ts';
import { type Corner, copper, type HouseKit, type RunTold } from './house-kit.ts';

type Place = readonly [x: number, y: number, z: number];

/** One way of draining the condensate. All else is the same in every option. */
export interface Drain {
  readonly option: string;
  /** Where condensate leaves the boiler, in the frame of its case. */
  readonly from: readonly [x: number, y: number, z: number];
  readonly draw: (tools: OptionTools) => void;
}

/** What an option draws with: ids of its own, so that each option is whole by itself. */
export interface OptionTools {
  readonly own: (id: string) => string;
  readonly point: (told: Parameters<HouseKit['point']>[0]) => void;
  readonly run: (told: Pick<RunTold, 'id' | 'service' | 'name' | 'corners'> & Partial<RunTold>) => void;
}

export const corner = ([x, y, z]: Place): Corner => ({ at: [x, y], ...extensionHeight(y, z) });

/** Points and runs keep their plain ids in option A; every other option adds its letter. */
export function optionTools(k: HouseKit, option: string): OptionTools {
  const own = (id: string) => (option === 'A' ? id : `${id}-${option}`);
  return {
    own,
    point: (told) => k.point({ ...told, id: own(told.id), option }),
    run: (told) => {
      const tube: Leg['tube'] = copper('22x0.9');
      k.run({ joining: 'endFeed', tube, ...told, id: own(told.id) }, option);
    },
  };
}

function gas({ own, run }: OptionTools): void {
  const tee = own('D-gas-tee');
  const boiler = (connection: string): Corner => ({ point: own('D-NB'), connection });
  run({
    id: 'D-g1',
    service: 'gas',
    name: 'Gas from the meter to the hob tee',
    tube: copper('28x0.9'),
    corners: [
      { point: 'D-GM', connection: 'outlet' },
      corner([900, 400, 450]),
      corner([900, 400, -300]),
      corner([900, 7500, -300]),
      corner([6600, 7500, -300]),
      corner([6600, 7500, 2537]),
      corner([6600, 8150, 2537]),
      corner([5460, 8150, 2537]),
      { ...corner([5460, 9400, 2537]), name: tee },
    ],
  });
  run({
    id: 'D-g2',
    service: 'gas',
    name: 'Gas from the hob tee to the boiler',
    tube: copper('28x0.9'),
    corners: [
      { node: tee },
      corner([5460, 12960, 2537]),
      corner([6640, 12960, 2537]),
      corner([6640, 12960, 1010]),
      corner([6640, 13300, 1010]),
      boiler('gas'),
    ],
  });
  run({
    id: 'D-g3',
    service: 'gas',
    name: 'Gas to the hob',
    corners: [
      { node: tee },
      corner([5460, 9400, 2600]),
      corner([6450, 9400, 2600]),
      { point: own('D-HB'), connection: 'gas' },
    ],
  });
}

function heating({ own, run }: OptionTools): void {
  run({
    id: 'D-f1',
    service: 'heatingFlow',
    name: 'Heating flow',
    corners: [
      { point: own('D-NB'), connection: 'flow' },
      corner([6640, 13430, 870]),
      corner([6640, 12860, 870]),
      corner([6640, 12860, 2537]),
      corner([5580, 12860, 2537]),
      corner([5580, 8210, 2537]),
      corner([6660, 8210, 2537]),
      corner([6660, 6560, 2537]),
      { point: 'D-OT', connection: 'flow' },
    ],
  });
  run({
    id: 'D-r1',
    service: 'heatingReturn',
    name: 'Heating return',
    corners: [
      { point: own('D-NB'), connection: 'return' },
      corner([6640, 13170, 1150]),
      corner([6640, 13060, 1150]),
      corner([6640, 13060, 2537]),
      corner([5220, 13060, 2537]),
      corner([5220, 8030, 2537]),
      corner([6430, 8030, 2537]),
      corner([6430, 6500, 2537]),
      { point: 'D-OT', connection: 'return' },
    ],
  });
}

function water({ own, run }: OptionTools): void {
  run({
    id: 'D-c1',
    service: 'cold',
    name: 'Cold to the boiler',
    corners: [
      { point: 'D-ST', connection: 'out' },
      corner([6550, 7400, 2537]),
      corner([6550, 8090, 2537]),
      corner([5340, 8090, 2537]),
      corner([5340, 13010, 2537]),
      corner([6640, 13010, 2537]),
      corner([6640, 13010, 1080]),
      corner([6640, 13235, 1080]),
      { point: own('D-NB'), connection: 'cold' },
    ],
  });
  run({
    id: 'D-h1',
    service: 'hot',
    name: 'Hot to the new sink',
    corners: [
      { point: own('D-NB'), connection: 'hot' },
      corner([6640, 13365, 940]),
      corner([6640, 12910, 940]),
      corner([6640, 12910, 2600]),
      corner([3700, 12910, 2600]),
      corner([3700, 12910, 2537]),
      corner([3700, 11700, 2537]),
      corner([2600, 11700, 2537]),
      { point: own('D-KS'), connection: 'hot' },
    ],
  });
}

function relief({ own, run }: OptionTools): void {
  run({
    id: 'D-p1',
    service: 'boilerRelief',
    name: 'Relief to low level outside',
    joining: 'compression',
    tube: copper('15x0.7'),
    corners: [
      { point: own('D-NB'), connection: 'relief' },
      corner([7040, 13620, 1160]),
      { point: own('D-PE'), connection: 'in' },
    ],
  });
}

/** Draws one option: what every option has, and its own way to drain the condensate. */
export function extensionOption(k: HouseKit, { option, from, draw }: Drain): void {
  const tools = optionTools(k, option);
  extensionNewPoints(tools, tail('condensate', 'condensate', 'Condensate', '21.5', from, 'down'));
  gas(tools);
  heating(tools);
  water(tools);
  relief(tools);
  draw(tools);
}
