import { definePoint } from '../define-point.ts';
import { choiceField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planBox } from '../symbol-parts.ts';

const fields = [
  yesNoField('opens', 'Opens'),
  choiceField('whose', 'Whose', { ours: 'this dwelling', next: 'another dwelling' }),
];

export default definePoint({
  id: 'neighbour-window',
  version: 1,
  ...spoken('Window next door', fields),
  letter: 'NW',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 1200, depthMm: 50, heightMm: 1050 },
  connections: () => [],
  defaults: { opens: null, whose: 'next' },
  planSymbol: (s) => [planBox(s), line(-s.widthMm / 2, s.depthMm / 2, s.widthMm / 2, s.depthMm / 2)],
  faceSymbol: (s) => [faceBox(s), line(0, 0, 0, s.heightMm)],
});
