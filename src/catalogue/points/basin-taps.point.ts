import { definePoint } from '../define-point.ts';
import { numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { tapped } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [numberField('flowLPerMin', 'Flow wanted', 'litres a minute', { max: 60 })];

export default definePoint({
  id: 'basin-taps',
  version: 1,
  ...spoken('Basin taps', fields),
  letter: 'BA',
  group: 'tap',
  role: { hot: 'end', cold: 'end' },
  hostedOnWall: true,
  assumedHeight: 'basinTail',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 200, depthMm: 120, heightMm: 150 },
  connections: (s) => [
    tail('hot', 'hot', 'Hot', '15', [-50, s.depthMm / 2, 0], 'down'),
    tail('cold', 'cold', 'Cold', '15', [50, s.depthMm / 2, 0], 'down'),
  ],
  defaults: { flowLPerMin: null },
  ...tapped('BA'),
});
