import { definePoint } from '../define-point.ts';
import { textField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, line, planBox } from '../symbol-parts.ts';

const fields = [textField('feeds', 'Feeds', 'What hangs on it: its metres then go by way of here.')];

export default definePoint({
  id: 'cable-route',
  version: 1,
  ...spoken('Cable', fields),
  letter: 'E',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 50, depthMm: 50, heightMm: 1000 },
  connections: () => [],
  defaults: { feeds: '' },
  planSymbol: (s) => [planBox(s), line(-s.widthMm / 2, 0, s.widthMm / 2, s.depthMm)],
  faceSymbol: (s) => [faceBox(s), faceMiddle(s, 'E')],
});
