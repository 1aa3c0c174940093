import { definePoint } from '../define-point.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

export default definePoint({
  id: 'standpipe',
  version: 1,
  ...spoken('Standpipe and trap', []),
  letter: 'SP',
  group: 'drain',
  role: { condensate: 'end', boilerRelief: 'end' },
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 60, depthMm: 60, heightMm: 600 },
  connections: (s) => [tail('in', 'condensate', 'Open end', '40', [0, s.depthMm / 2, s.heightMm], 'up')],
  defaults: {},
  ...round('SP'),
});
