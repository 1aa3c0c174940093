import { definePoint } from '../define-point.ts';
import { choiceField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planFrame, planMiddle } from '../symbol-parts.ts';

const fields = [
  choiceField('madeOf', 'Made of', {
    steel: 'steel',
    timber: 'timber',
    concrete: 'concrete',
    flitch: 'timber and steel',
  }),
  yesNoField('mayBeDrilled', 'May be drilled', 'Only where whoever designed it said so.'),
];

/** Carries a floor or a wall. Its height is that of its underside. */
export default definePoint({
  id: 'beam',
  version: 1,
  ...spoken('Beam', fields),
  letter: 'BM',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'ceiling',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 3000, depthMm: 150, heightMm: 200 },
  connections: () => [],
  defaults: { madeOf: null, mayBeDrilled: null },
  planSymbol: (s) => [
    ...planFrame(s),
    line(-s.widthMm / 2, s.depthMm / 2, -s.widthMm * 0.1, s.depthMm / 2),
    line(s.widthMm * 0.1, s.depthMm / 2, s.widthMm / 2, s.depthMm / 2),
    planMiddle(s, 'BM'),
  ],
  faceSymbol: (s) => [
    faceBox(s),
    line(-s.widthMm / 2, s.heightMm * 0.12, s.widthMm / 2, s.heightMm * 0.12),
    line(-s.widthMm / 2, s.heightMm * 0.88, s.widthMm / 2, s.heightMm * 0.88),
  ],
});
