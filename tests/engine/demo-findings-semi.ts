import { said, type TrueFinding } from './demo-true.ts';

const after = said('semi', 'after');
const before = said('semi', 'before');

export const SEMI_FINDINGS: readonly TrueFinding[] = [
  after('stop', 'building/across-opening', ['A-d2', 'd6'], 'along at y 3250 to 3550, 60 behind a door from y 3200'),
  after('check', 'building/across-opening', ['A-e2', 'd6'], 'D1 ends at the same tundish, 60 behind the door'),
  after('check', 'condensate/fall', ['A-k1'], '51 over 1120 is 45.5, between the older and the newer guide'),
  after('check', 'structure/heat-beside-cold', ['A-c1', 'A-h1'], 'x 7875 and 7725 between the same two joists'),
  after('cantTell', 'discharge/end', ['A-E1', 'A-d1'], 'both low over the path, asked once; nobody told of a cage'),
  after('cantTell', 'gas/drop', ['A-HB'], 'nobody read the size between tee and hob'),
  after(
    'note',
    'building/through-wall',
    ['FE', 'GP2'],
    'discharges and relief out to the east, heating over the block wall',
  ),
  after('note', 'network/tail-outside', ['A-NB'], 'condensate 230 and relief 310 from the middle of a case 440 wide'),
  after('note', 'structure/under-wall', ['AV1'], 'hot and cold to the shower below the partition at y 2250'),
  after(
    'note',
    'heating/low-point',
    ['A-f1'],
    'down into the floor and up to the zone valves; the cock is on the return',
  ),
  after(
    'cantTell',
    'heating/vessel',
    ['A-NB'],
    '12 litres of vessel, and 120 to 238 litres in a circuit nobody counted',
  ),
  after('note', 'network/open-end', ['A-r1'], 'ends 212 from the zone valves'),
  after('note', 'flue/plume', ['A-BO', 'A-NF'], 'fence at 900 and the window over it at 2223, of 2500'),
  after('note', 'water/insulation', ['A-CY', 'A-h1'], '3.5 m of new hot, bare'),
  ...[before, after].map((when) =>
    when(
      'cantTell',
      'preheat/inlet-limit',
      ['A-CY', 'A-PV'],
      'neither the sheet of the one nor the limit of the other was read',
    ),
  ),
  before('stop', 'discharge/tundish', ['A-PV'], 'an unvented vessel without a tundish, as found'),
  before('cantTell', 'gas/drop', ['A-EB'], 'nobody read the size between tee and old boiler'),
  before('cantTell', 'gas/drop', ['A-HB'], 'nobody read the size between tee and hob'),
];
