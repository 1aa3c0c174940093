import { tail } from '../../src/catalogue/tail.ts';
import type { Connection } from '../../src/plan/records/pipework.ts';
import { GROUND } from './extension-building.ts';
import type { OptionTools } from './extension-option.ts';
import { datum, floor, onWall } from './house-kit.ts';

const size = (widthMm: number, depthMm: number, heightMm: number) => ({ widthMm, depthMm, heightMm });
/** Wanted round the new combi by its sheet. */
const CLEAR = { clearFrontMm: 600, clearSidesMm: 5, clearAboveMm: 200, clearBelowMm: 200 };

/** What is new in every option: boiler and flue, hob, sink, end of the relief. */
export function extensionNewPoints({ point }: OptionTools, condensate: Connection): void {
  point({
    id: 'D-NB',
    kind: 'boiler',
    name: 'New combi',
    place: onWall('DXE', 'left', 5300, floor(GROUND, 1250)),
    size: size(420, 330, 720),
    connections: [
      tail('flow', 'heatingFlow', 'Heating flow', '22', [-130, 60, -70], 'down'),
      tail('hot', 'hot', 'Hot', '22', [-65, 60, -70], 'down'),
      tail('gas', 'gas', 'Gas', '28', [0, 60, -70], 'down'),
      tail('cold', 'cold', 'Cold', '22', [65, 60, -70], 'down'),
      tail('return', 'heatingReturn', 'Heating return', '22', [130, 60, -70], 'down'),
      condensate,
      tail('relief', 'boilerRelief', 'Relief', '15', [-320, 70, -80], 'back'),
    ],
    fields: {
      type: 'combi',
      inputKwHotWater: 36.2,
      inputBasis: 'gross',
      outputKw: 32,
      hotLPerMin: 13.1,
      hotRiseK: 35,
      pumpHeadLeftKPa: 20,
      waterLitres: 2,
      vesselLitres: 10,
      ...CLEAR,
      flueMaxM: 9,
      flueBend90M: 1,
      flueBend45M: 0.5,
    },
  });
  point({
    id: 'D-AL',
    kind: 'co-alarm',
    name: 'New carbon monoxide alarm',
    place: onWall('DP2', 'right', 1250, floor(GROUND, 2130)),
    size: size(120, 40, 80),
    fields: { on: 'wall' },
  });
  point({
    id: 'D-NF',
    kind: 'flue-terminal',
    name: 'New flue terminal',
    place: onWall('DXE', 'right', 5300, floor(GROUND, 2080)),
    size: size(100, 100, 100),
    fields: { serves: 'New combi', aboveGroundMm: 2280 },
  });
  point({
    id: 'D-HB',
    kind: 'hob',
    name: 'Hob',
    place: onWall('DXE', 'left', 1400, floor(GROUND, 900)),
    size: size(580, 510, 60),
    connections: [tail('gas', 'gas', 'Gas', '15', [0, 250, 0], 'up')],
    fields: { inputKw: 9.5, inputBasis: 'gross' },
  });
  point({
    id: 'D-KS',
    kind: 'sink-taps',
    name: 'New kitchen sink',
    place: onWall('DXW', 'right', 3700, floor(GROUND, 900)),
    size: size(250, 350, 200),
    connections: [
      tail('hot', 'hot', 'Hot', '15', [0, 300, 0], 'up'),
      tail('cold', 'cold', 'Cold', '15', [100, 300, 0], 'up'),
    ],
    fields: { flowLPerMin: 6 },
  });
  point({
    id: 'D-PE',
    kind: 'outside-end',
    name: 'End of the relief',
    place: onWall('DXE', 'right', 5620, datum(-160)),
    size: size(60, 60, 60),
    connections: [tail('in', 'boilerRelief', 'Open end', '15', [0, 40, 60], 'up')],
    fields: { ends: 'lowLevel', sharedGround: false },
  });
}
