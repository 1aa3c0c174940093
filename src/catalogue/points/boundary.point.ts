import { definePoint } from '../define-point.ts';
import { choiceField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planBox } from '../symbol-parts.ts';

const fields = [choiceField('kind', 'What it is', { fence: 'fence', wall: 'wall', line: 'line only' })];

export default definePoint({
  id: 'boundary',
  version: 1,
  ...spoken('Boundary', fields),
  letter: 'BY',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 3000, depthMm: 50, heightMm: 1800 },
  connections: () => [],
  defaults: { kind: null },
  planSymbol: (s) => [planBox(s), ...[-0.3, 0, 0.3].map((k) => line(k * s.widthMm, 0, k * s.widthMm, s.depthMm))],
  faceSymbol: (s) => [faceBox(s)],
});
