import { definePoint } from '../define-point.ts';
import { choiceField, numberField, textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceMiddle, line, planRing, ring } from '../symbol-parts.ts';

const fields = [
  choiceField('way', 'Goes', { horizontal: 'through the wall', vertical: 'through the roof' }),
  textField('serves', 'Serves'),
  numberField('lengthM', 'Flue length', 'm', { max: 50 }),
  numberField('hiddenM', 'Of it hidden', 'm', { max: 50 }),
  yesNoField('hatches', 'Hatches at the hidden part'),
  yesNoField('throughOtherDwelling', 'Through another dwelling'),
  yesNoField('plumeKit', 'Plume kit'),
  numberField('aboveGroundMm', 'Above the ground outside', 'mm', { max: 50000 }),
];

export default definePoint({
  id: 'flue-terminal',
  version: 1,
  ...spoken('Flue terminal', fields),
  letter: 'FT',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'flue-terminal',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 100, depthMm: 100, heightMm: 100 },
  connections: () => [],
  defaults: {
    way: 'horizontal',
    serves: '',
    lengthM: null,
    hiddenM: null,
    hatches: null,
    throughOtherDwelling: null,
    plumeKit: null,
    aboveGroundMm: null,
  },
  planSymbol: (s) => [planRing(s), ring(0, s.depthMm / 2, s.widthMm / 5), line(-s.widthMm / 2, 0, s.widthMm / 2, 0)],
  faceSymbol: (s) => [
    ring(0, s.heightMm / 2, s.widthMm / 2),
    ring(0, s.heightMm / 2, s.widthMm / 4),
    faceMiddle(s, 'FT'),
  ],
});
