import { definePoint } from '../define-point.ts';
import { numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { tapped } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [numberField('flowLPerMin', 'Flow wanted', 'litres a minute', { max: 60 })];

export default definePoint({
  id: 'sink-taps',
  version: 1,
  ...spoken('Sink taps', fields),
  letter: 'SK',
  group: 'tap',
  role: { hot: 'end', cold: 'end' },
  hostedOnWall: true,
  assumedHeight: 'sinkTail',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 250, depthMm: 150, heightMm: 250 },
  connections: (s) => [
    tail('hot', 'hot', 'Hot', '15', [-50, s.depthMm / 2, 0], 'down'),
    tail('cold', 'cold', 'Cold', '15', [50, s.depthMm / 2, 0], 'down'),
  ],
  defaults: { flowLPerMin: null },
  ...tapped('SK'),
});
