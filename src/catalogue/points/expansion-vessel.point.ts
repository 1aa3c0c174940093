import { definePoint } from '../define-point.ts';
import { found, numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('litres', 'Holds', 'litres', { max: 500 }),
  found(numberField('chargeBar', 'Charged to', 'bar', { max: 6 })),
];

/** Water goes in and out of it and none goes through, so it is an end of either leg that takes no flow. */
export default definePoint({
  id: 'expansion-vessel',
  version: 1,
  ...spoken('Expansion vessel', fields),
  letter: 'EV',
  group: 'other',
  role: { heatingFlow: 'end', heatingReturn: 'source' },
  hostedOnWall: true,
  assumedHeight: 'tundish',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 300, depthMm: 300, heightMm: 350 },
  connections: (s) => [tail('in', 'heatingReturn', 'Water', '22', [0, s.depthMm / 2, 0], 'down')],
  defaults: { litres: null, chargeBar: null },
  ...round('EV'),
});
