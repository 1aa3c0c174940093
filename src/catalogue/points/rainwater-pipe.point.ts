import { definePoint } from '../define-point.ts';
import { choiceField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField('drains', 'Drains to', { foul: 'foul or combined', surface: 'surface water' }),
  yesNoField('airBreak', 'Outside air break before it'),
];

export default definePoint({
  id: 'rainwater-pipe',
  version: 1,
  ...spoken('Rainwater pipe', fields),
  letter: 'RW',
  group: 'drain',
  role: { condensate: 'end', boilerRelief: 'end' },
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 68, depthMm: 68, heightMm: 2400 },
  connections: (s) => [tail('in', 'condensate', 'Air break', '32', [0, s.depthMm, 300], 'front')],
  defaults: { drains: null, airBreak: null },
  ...round('RW'),
});
