import { definePoint } from '../define-point.ts';
import { yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [yesNoField('aboveTrap', 'Entry above the trap'), yesNoField('airBreak', 'Air break before it')];

export default definePoint({
  id: 'sink-waste',
  version: 1,
  ...spoken('Sink waste', fields),
  letter: 'W',
  group: 'drain',
  role: { condensate: 'end', boilerRelief: 'end' },
  hostedOnWall: true,
  assumedHeight: 'sinkTail',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 100, depthMm: 100, heightMm: 200 },
  connections: (s) => [
    tail('condensate', 'condensate', 'Above the trap', '21.5', [0, s.depthMm / 2, s.heightMm], 'up'),
  ],
  defaults: { aboveTrap: true, airBreak: null },
  ...round('W'),
});
