import { definePoint } from '../define-point.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { kvField } from '../preheat-fields.ts';
import { spoken } from '../say-point.ts';
import { bowTie, line } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('setC', 'Set to', 'C', { max: 90 }),
  yesNoField('failsShut', 'Shuts off when the cold fails'),
  yesNoField('hasChecks', 'Check valves in both inlets', 'Its own, or drawn in the pipes to it.'),
  kvField,
];

export default definePoint({
  id: 'mixing-valve',
  version: 1,
  ...spoken('Mixing valve', fields),
  letter: 'MV',
  group: 'other',
  role: { hotIn: 'end', coldIn: 'end', out: 'source' },
  hostedOnWall: true,
  assumedHeight: 'tundish',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 120, depthMm: 60, heightMm: 90 },
  connections: (s) => [
    tail('hotIn', 'hot', 'Hot in', '15', [-s.widthMm / 2, s.depthMm / 2, s.heightMm / 3], 'left'),
    tail('coldIn', 'cold', 'Cold in', '15', [s.widthMm / 2, s.depthMm / 2, s.heightMm / 3], 'right'),
    tail('out', 'hot', 'Mixed out', '15', [0, s.depthMm / 2, s.heightMm], 'up'),
  ],
  defaults: { setC: null },
  planSymbol: (s) => [...bowTie(s.widthMm, s.depthMm / 2, s.depthMm / 2)],
  faceSymbol: (s) => [...bowTie(s.widthMm, s.heightMm / 3, s.heightMm / 3), line(0, s.heightMm / 3, 0, s.heightMm)],
});
