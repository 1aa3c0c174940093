import { tail } from '../../src/catalogue/tail.ts';
import { GROUND } from './extension-building.ts';
import { corner, type Drain } from './extension-option.ts';
import { datum, floor, onWall } from './house-kit.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });
const waste = { kind: 'waste', size: '32' };
const told = { service: 'condensate', joining: 'solvent' as const, turns: 'bend' as const };

/** Beside the case, to its left as one faces it. */
const BESIDE = [-190, 100, -100] as const;

const pumped: Drain = {
  option: 'A',
  from: BESIDE,
  draw: ({ own, point, run }) => {
    point({
      id: 'D-CP',
      kind: 'condensate-pump',
      name: 'Condensate pump',
      place: onWall('DXE', 'left', 5560, floor(GROUND, 750)),
      size: size(250, 130, 150),
      connections: [
        tail('in', 'condensate', 'In', '21.5', [70, 100, 150], 'up'),
        tail('out', 'condensate', 'Hose out', '10', [0, 40, 150], 'up'),
      ],
      fields: { liftM: 4, runM: 20, overflowStops: true },
    });
    run({
      ...told,
      id: 'D-k2',
      name: 'Condensate to the pump',
      tube: { kind: 'plastic-overflow', size: '21.5' },
      corners: [
        { point: own('D-NB'), connection: 'condensate' },
        { point: own('D-CP'), connection: 'in' },
      ],
    });
    run({
      ...told,
      id: 'D-k3',
      name: 'Hose of the pump to the old standpipe',
      joining: 'pushFit',
      tube: { kind: 'unknown', size: null },
      corners: [
        { point: own('D-CP'), connection: 'out' },
        corner([6660, 13560, 2600]),
        corner([5020, 13560, 2600]),
        corner([5020, 13560, 2537]),
        corner([5020, 8240, 2537]),
        corner([5020, 8240, 2600]),
        corner([6380, 8240, 2600]),
        corner([6380, 7000, 2600]),
        { point: 'D-WM', connection: 'in' },
      ],
    });
  },
};

const outsideWall: Drain = {
  option: 'B',
  from: BESIDE,
  draw: ({ own, run }) =>
    run({
      ...told,
      id: 'D-k1',
      name: 'Condensate along the outside wall to the foul gully',
      tube: waste,
      insulation: { kind: 'waterproof', thicknessMm: 19 },
      corners: [
        { point: own('D-NB'), connection: 'condensate' },
        corner([7060, 13490, 1129]),
        corner([7060, 7400, 855]),
        { point: 'D-FG', connection: 'condensate' },
      ],
    }),
};

const soakaway: Drain = {
  option: 'C',
  from: [-260, 140, -150],
  draw: ({ own, point, run }) => {
    point({
      id: 'D-SA',
      kind: 'soakaway',
      name: 'Soakaway in the lawn',
      place: { on: 'storey', x: 6000, y: 16250, angleDeg: 0, height: datum(-900) },
      size: size(300, 300, 400),
      connections: [tail('in', 'condensate', 'In', '32', [560, 150, 437], 'right')],
      fields: { fromWallMm: 1500, ground: 'clay' },
    });
    run({
      ...told,
      id: 'D-k5',
      name: 'Condensate to the soakaway',
      tube: waste,
      corners: [
        { point: own('D-NB'), connection: 'condensate' },
        corner([6560, 14700, 1047]),
        corner([6560, 14700, -400]),
        { point: own('D-SA'), connection: 'in' },
      ],
    });
  },
};

const underSlab: Drain = {
  option: 'D',
  from: BESIDE,
  draw: ({ own, point, run }) => {
    point({
      id: 'D-UF',
      kind: 'condensate-drain',
      name: 'New foul branch under the slab',
      place: { on: 'storey', x: 6300, y: 14055, angleDeg: 0, height: floor(GROUND, -300) },
      size: size(110, 110, 110),
      connections: [tail('in', 'condensate', 'In', '32', [0, 55, 100], 'right')],
      fields: { laid: false, before: 'the pour' },
    });
    run({
      ...told,
      id: 'D-k4',
      name: 'Condensate into the slab to the new branch',
      tube: waste,
      corners: [
        { point: own('D-NB'), connection: 'condensate' },
        corner([6600, 13490, -152]),
        corner([6600, 14000, -183]),
        { point: own('D-UF'), connection: 'in' },
      ],
    });
  },
};

/** The pump is what the engineer would do today; the branch is best while the slab is open. */
export const EXTENSION_DRAINS: readonly Drain[] = [pumped, outsideWall, soakaway, underSlab];
