import { definePoint } from '../define-point.ts';
import { numberField, textField } from '../field-specs.ts';
import { kvField } from '../preheat-fields.ts';
import { spoken } from '../say-point.ts';
import { bowTie, line } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  textField('sends', 'Sends'),
  numberField('sendsAboveC', 'Sends past the heater above', '°C', {
    max: 90,
    help: 'Warmer water goes to the outlets straight; cooler goes through the heater.',
  }),
  kvField,
];

export default definePoint({
  id: 'diverting-valve',
  version: 1,
  ...spoken('Diverting valve', fields),
  letter: 'DV',
  group: 'other',
  role: { in: 'end', a: 'source', b: 'source' },
  hostedOnWall: true,
  assumedHeight: 'tundish',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 120, depthMm: 80, heightMm: 120 },
  connections: (s) => [
    tail('in', 'preheated', 'In', '22', [0, s.depthMm / 2, 0], 'down'),
    tail('a', 'preheated', 'Way A', '22', [-s.widthMm / 2, s.depthMm / 2, s.heightMm / 2], 'left'),
    tail('b', 'preheated', 'Way B', '22', [s.widthMm / 2, s.depthMm / 2, s.heightMm / 2], 'right'),
  ],
  defaults: { sends: '' },
  planSymbol: (s) => [...bowTie(s.widthMm, s.depthMm / 2, s.depthMm / 2)],
  faceSymbol: (s) => [...bowTie(s.widthMm, s.heightMm / 2, s.heightMm / 4), line(0, 0, 0, s.heightMm / 2)],
});
