import { definePoint } from '../define-point.ts';
import { textField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planBox } from '../symbol-parts.ts';

const fields = [textField('what', 'What it is')];

export default definePoint({
  id: 'obstacle',
  version: 1,
  ...spoken('Keep clear', fields),
  letter: 'X',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 300, depthMm: 300, heightMm: 300 },
  connections: () => [],
  defaults: { what: '' },
  planSymbol: (s) => [
    planBox(s),
    line(-s.widthMm / 2, 0, s.widthMm / 2, s.depthMm),
    line(-s.widthMm / 2, s.depthMm, s.widthMm / 2, 0),
  ],
  faceSymbol: (s) => [faceBox(s)],
});
