import { definePoint } from '../define-point.ts';
import { choiceField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, planBox, planMiddle, planRing } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField('drains', 'Drains to', { foul: 'foul or combined', surface: 'surface water' }),
  yesNoField('trapped', 'Trapped'),
  yesNoField('belowGrating', 'Pipe ends below the grating, above the water'),
];

export default definePoint({
  id: 'gully',
  version: 1,
  ...spoken('Gully', fields),
  letter: 'GY',
  group: 'drain',
  role: { condensate: 'end', discharge: 'end', boilerRelief: 'end' },
  hostedOnWall: false,
  assumedHeight: 'gully',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 250, depthMm: 250, heightMm: 100 },
  connections: (s) => [
    tail('condensate', 'condensate', 'Condensate', '32', [-s.widthMm / 4, s.depthMm / 2, s.heightMm], 'up'),
    tail('discharge', 'discharge', 'Discharge', '22', [s.widthMm / 4, s.depthMm / 2, s.heightMm], 'up'),
  ],
  defaults: { drains: null, trapped: null, belowGrating: null },
  planSymbol: (s) => [planBox(s), planRing(s), planMiddle(s, 'GY')],
  faceSymbol: (s) => [faceBox(s), faceMiddle(s, 'GY')],
});
