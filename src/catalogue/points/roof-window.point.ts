import { definePoint } from '../define-point.ts';
import { choiceField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, frame, line, planFrame, rect } from '../symbol-parts.ts';

const fields = [
  yesNoField('opens', 'Opens'),
  choiceField('whose', 'Whose', { ours: 'this dwelling', next: 'another dwelling' }),
];

/** A window in the slope of a roof, drawn as it lies from above. Its height is that of its lower edge. */
export default definePoint({
  id: 'roof-window',
  version: 1,
  ...spoken('Roof window', fields),
  letter: 'RL',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'ceiling',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 780, depthMm: 850, heightMm: 600 },
  connections: () => [],
  defaults: { opens: null, whose: 'ours' },
  planSymbol: (s) => [
    ...planFrame(s),
    ...frame(-s.widthMm * 0.4, s.depthMm * 0.1, s.widthMm * 0.8, s.depthMm * 0.8),
    line(-s.widthMm * 0.4, s.depthMm * 0.1, 0, s.depthMm * 0.9),
    line(s.widthMm * 0.4, s.depthMm * 0.1, 0, s.depthMm * 0.9),
  ],
  faceSymbol: (s) => [faceBox(s), rect(-s.widthMm * 0.4, s.heightMm * 0.1, s.widthMm * 0.8, s.heightMm * 0.8)],
});
