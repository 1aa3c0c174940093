import { EXTENSION_FINDINGS } from './demo-findings-extension.ts';
import { SEMI_FINDINGS } from './demo-findings-semi.ts';
import { said, type TrueFinding } from './demo-true.ts';

const flat = said('flat', 'after');
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
  flat('cantTell', 'gas/escape-route', ['B-g1', 'hall'], 'above the ceiling of a hall that may be protected'),
  flat('check', 'gas/shut-off', ['B-HB'], 'new gas to the hob ends at its tail with no cock drawn on it'),
  flat('check', 'gas/shut-off', ['B-NB'], 'new gas to the boiler ends at its tail with no cock drawn on it'),
  flat(
    'cantTell',
    'gas/in-void',
    ['B-g1', 'BV1'],
    '6.65 m lie above the hall ceiling, and nobody told how it is ventilated',
  ),
  flat(
    'note',
    'building/through-wall',
    ['B-f1'],
    'BP4 at x 3050, BP5 at x 5050, then BP7 at y 4850 into the old cupboard',
  ),
  flat('note', 'building/through-wall', ['B-r1'], 'the same three walls as the flow, 60 higher'),
  flat('note', 'building/through-wall', ['B-h1'], 'the same three walls at y 6180 and x 5130'),
  flat('note', 'building/through-wall', ['B-g1'], 'BP2 at y 2850, BP3 at x 2850, BP1 at y 4050, all up to the ceiling'),
  flat('note', 'building/through-wall', ['B-p1'], 'out through the north wall, 6320 to 6600'),
  house('check', 'condensate/fall', ['condensate'], '110 over 2221 is 49.5, between the older and the newer guide'),
  house('check', 'structure/heat-beside-cold', ['cold', 'return'], '60 between centres, for 1.8 m between two joists'),
  house(
    'check',
    'structure/joists',
    ['FV', 'gas-new'],
    'the joist below the cupboard wall is doubled: it carries more',
  ),
  house('check', 'structure/threading', ['FV', 'cold'], 'y 5600 to 3420 straight through five joists'),
  house('check', 'structure/threading', ['FV', 'gas-new'], 'y 700 to 3480 straight through seven joists'),
  house(
    'note',
    'building/through-wall',
    ['cold'],
    'crosses x 4000 between the joists, where block stands below and stud above',
  ),
  house('note', 'building/through-wall', ['flow'], 'crosses x 4000 between the joists on its way to the kitchen'),
  house('note', 'building/through-wall', ['return'], 'beside the flow, through the same wall'),
  house('note', 'building/through-wall', ['hot'], 'beside the flow, through the same wall'),
  house(
    'note',
    'building/through-wall',
    ['condensate'],
    'through the bathroom wall at y 4050 on its way to the soil stack',
  ),
  house('note', 'building/through-wall', ['relief'], 'out through the east wall, 6920 to 7200'),
  houseBefore(
    'stop',
    'gas/drop',
    ['old-boiler'],
    'a 24 kW combi on at least 6.5 m of unseen 15 with four bends loses 1.5 mbar at least',
  ),
];
