import { definePoint } from '../define-point.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  yesNoField('outside', 'Outside'),
  yesNoField('heatSafe', 'Proven for hot discharge'),
  numberField('aboveFootMm', 'Boss above the bend at the foot', 'mm', { max: 20000 }),
];

export default definePoint({
  id: 'soil-stack',
  version: 1,
  ...spoken('Soil stack', fields),
  letter: 'SS',
  group: 'drain',
  role: { condensate: 'end', discharge: 'end', boilerRelief: 'end' },
  hostedOnWall: false,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 110, depthMm: 110, heightMm: 2400 },
  connections: (s) => [tail('in', 'condensate', 'Boss', '32', [0, s.depthMm, 600], 'front')],
  defaults: { outside: null, heatSafe: null, aboveFootMm: null },
  ...round('SS'),
});
