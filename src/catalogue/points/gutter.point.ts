import { definePoint } from '../define-point.ts';
import { choiceField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planFrame } from '../symbol-parts.ts';

const fields = [
  choiceField('madeOf', 'Made of', { plastic: 'plastic', metal: 'metal' }),
  choiceField('carries', 'Leads to', { surface: 'surface water', combined: 'foul or combined', soakaway: 'soakaway' }),
];

/** Along the eaves. Its height is that of its underside. */
export default definePoint({
  id: 'gutter',
  version: 1,
  ...spoken('Gutter', fields),
  letter: 'GU',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'ceiling',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 3000, depthMm: 110, heightMm: 80 },
  connections: () => [],
  defaults: { madeOf: null, carries: null },
  planSymbol: (s) => [...planFrame(s), line(-s.widthMm / 2, s.depthMm * 0.75, s.widthMm / 2, s.depthMm * 0.75)],
  faceSymbol: (s) => [faceBox(s), line(-s.widthMm / 2, s.heightMm * 0.75, s.widthMm / 2, s.heightMm * 0.75)],
});
