import { definePoint } from '../define-point.ts';
import { choiceField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { line, planRing, ring } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField('ends', 'Ends', {
    turnedBack: 'turned back to the wall',
    lowLevel: 'low level, downward',
    gully: 'below a grating',
    hopper: 'in a hopper',
    roof: 'on a roof',
  }),
  numberField('aboveGroundMm', 'Above the ground', 'mm', { max: 20000 }),
  yesNoField('caged', 'Wire cage'),
  numberField('gutterM', 'From plastic gutters', 'm', { max: 100 }),
  yesNoField('sharedGround', 'Over a path or shared ground'),
];

export default definePoint({
  id: 'outside-end',
  version: 1,
  ...spoken('Outside end', fields),
  letter: 'OE',
  group: 'drain',
  role: { discharge: 'end', boilerRelief: 'end', condensate: 'end' },
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 60, depthMm: 60, heightMm: 60 },
  connections: (s) => [tail('in', 'discharge', 'Open end', '22', [0, s.depthMm / 2, s.heightMm], 'up')],
  defaults: { ends: null, aboveGroundMm: null, caged: null, gutterM: null, sharedGround: null },
  planSymbol: (s) => [planRing(s), ring(0, s.depthMm / 2, Math.min(s.widthMm, s.depthMm) / 10, true)],
  faceSymbol: (s) => [
    line(0, s.heightMm, 0, 0),
    line(-s.widthMm / 3, s.heightMm / 3, 0, 0),
    line(s.widthMm / 3, s.heightMm / 3, 0, 0),
  ],
});
