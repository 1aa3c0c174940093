import { said, type TrueFinding } from './demo-true.ts';

const after = said('semi', 'after');
const before = said('semi', 'before');

export const SEMI_FINDINGS: readonly TrueFinding[] = [
  after('stop', 'building/across-opening', ['A-d2', 'd6'], 'down and along at x 7060, 60 behind a door to y 3960'),
  after('stop', 'building/across-opening', ['A-e2', 'd6'], 'D1 from the vessel ends at the same tundish'),
  after('check', 'condensate/fall', ['A-k1'], '51 over 1120 is 45.5, between the older and the newer guide'),
  after('check', 'structure/heat-beside-cold', ['A-c1', 'A-h1'], 'x 7875 and 7725 between the same two joists'),
  after('cantTell', 'discharge/end', ['A-E1', 'A-d1'], 'low over the path; nobody told of a cage'),
  after('cantTell', 'discharge/end', ['A-E2', 'A-d2'], 'low over the path; nobody told of a cage'),
  after('cantTell', 'gas/drop', ['A-HB'], 'nobody read the size between tee and hob'),
  after('note', 'building/through-wall', ['A-d1'], 'out through the east wall, 8100 to 8400'),
  after('note', 'building/through-wall', ['A-d2'], 'out through the east wall, 8100 to 8400'),
  after('note', 'building/through-wall', ['A-p1'], 'out through the east wall, 8100 to 8400'),
  after('note', 'building/through-wall', ['A-f1'], 'over the block wall at y 4100, between the joists'),
  after('note', 'building/through-wall', ['A-r1'], 'beside the flow, through the same wall'),
  after('note', 'network/open-end', ['A-r1'], 'ends 212 from the zone valves'),
  before('stop', 'discharge/tundish', ['A-PV'], 'an unvented vessel without a tundish, as found'),
  before('cantTell', 'gas/drop', ['A-EB'], 'nobody read the size between tee and old boiler'),
  before('cantTell', 'gas/drop', ['A-HB'], 'nobody read the size between tee and hob'),
];
