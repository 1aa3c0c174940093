import { definePoint } from '../define-point.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, faceRing, planBox, planMiddle } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('flowLPerMin', 'Flow wanted', 'litres a minute', { max: 60 }),
  yesNoField('thermostatic', 'Thermostatic'),
];

export default definePoint({
  id: 'shower-valve',
  version: 1,
  ...spoken('Shower valve', fields),
  letter: 'SH',
  group: 'tap',
  role: { hot: 'end', cold: 'end' },
  hostedOnWall: true,
  assumedHeight: 'showerValve',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 300, depthMm: 70, heightMm: 60 },
  connections: (s) => [
    tail('hot', 'hot', 'Hot', '15', [-75, 0, s.heightMm / 2], 'back'),
    tail('cold', 'cold', 'Cold', '15', [75, 0, s.heightMm / 2], 'back'),
  ],
  defaults: { flowLPerMin: null, thermostatic: null },
  planSymbol: (s) => [planBox(s), planMiddle(s, 'SH')],
  faceSymbol: (s) => [faceBox(s), faceRing(s), faceMiddle(s, 'SH')],
});
