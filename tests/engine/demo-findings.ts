import { EXTENSION_FINDINGS } from './demo-findings-extension.ts';
import { SEMI_FINDINGS } from './demo-findings-semi.ts';
import { said, type TrueFinding } from './demo-true.ts';

const flat = said('flat', 'after');
const flatBefore = said('flat', 'before');
const house = said('two-storey', 'after');
const houseBefore = said('two-storey', 'before');

/** Everything the engine says of a demo plan, each with why it is true of that house. Nothing else may be said. */
export const TRUE_FINDINGS: readonly TrueFinding[] = [
  ...EXTENSION_FINDINGS,
  ...SEMI_FINDINGS,
  flat(
    'stop',
    'clash/runs',
    ['B-c1', 'B-r1'],
    'cold at y 6250 and the return coming down at y 6240: 10 apart, 22 wanted',
  ),
  flat('check', 'condensate/fall', ['B-k1'], '45 over 980 is 45.9, between the older and the newer guide'),
  flat('note', 'network/tail-outside', ['B-NB'], 'relief 230 from the middle of a case 400 wide'),
  flat('note', 'network/tail-unused', ['B-OT'], 'the cold comes from the stop tap'),
  flat('cantTell', 'gas/escape-route', ['B-g1', 'hall'], 'above the ceiling of a hall that may be protected'),
  flat('check', 'gas/shut-off', ['B-HB'], 'new gas to the hob ends at its tail with no cock drawn on it'),
  flat('check', 'gas/shut-off', ['B-NB'], 'new gas to the boiler ends at its tail with no cock drawn on it'),
  flat(
    'cantTell',
    'gas/in-void',
    ['B-g1', 'BV1'],
    '6.65 m lie above the hall ceiling, and nobody told how it is ventilated',
  ),
  flat('note', 'heating/filter', ['B-NB'], 'none is drawn'),
  flat('note', 'space/gas-in-sight', ['B-g1', 'lounge'], 'x 2900 to 400 below the lounge ceiling, which has no void'),
  ...[flat, flatBefore].map((when) => when('check', 'safety/bonding', ['B-MB'], '6 mm2 by the survey, 10 is usual')),
  flat('cantTell', 'safety/bonding', ['B-ST'], 'new cold from the stop tap, and nobody looked for a clamp'),
  flat('note', 'water/insulation', ['B-NB', 'B-h1'], '7.0 m of new hot, bare'),
  flatBefore('check', 'flue/hidden', ['B-EF'], '3.4 m above the bathroom ceiling and no hatch'),
  house('check', 'safety/alarm', ['new-boiler'], 'none is drawn'),
  house('note', 'water/insulation', ['hot', 'new-boiler'], '4.2 m of new hot, bare'),
  house('note', 'flue/plume', ['boundary', 'new-flue'], 'near side of the fence 1150 from the wall, terminal 100 deep'),
  house('note', 'space/cupboard', ['airing-cupboard', 'new-boiler'], 'the airing cupboard keeps its linen'),
  house('note', 'structure/under-wall', ['FV'], 'y 4050 and the partitions of the first floor'),
  house('check', 'condensate/fall', ['condensate'], '110 over 2221 is 49.5, between the older and the newer guide'),
  house('check', 'structure/heat-beside-cold', ['cold', 'return'], '60 between centres, for 1.8 m between two joists'),
  house(
    'check',
    'structure/joists',
    ['FV', 'gas-new'],
    'the joist below the cupboard wall is doubled: it carries more',
  ),
  house('check', 'structure/threading', ['FV'], 'gas and cold straight through seven and five joists'),
  house(
    'note',
    'building/through-wall',
    ['FE', 'FP3', 'GP1'],
    'relief out, condensate to the stack, the rest over the block wall',
  ),
  flat(
    'note',
    'building/through-wall',
    ['BN', 'BP1', 'BP2', 'BP3', 'BP4', 'BP5', 'BP7'],
    'gas through hall and lounge to the kitchen; relief out; flow, return and hot behind the bath',
  ),
  houseBefore(
    'stop',
    'gas/drop',
    ['old-boiler'],
    'a 24 kW combi on at least 6.5 m of unseen 15 with four bends loses 1.5 mbar at least',
  ),
];
