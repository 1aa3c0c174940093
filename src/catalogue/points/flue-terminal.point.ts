import { definePoint } from '../define-point.ts';
import { choiceField, numberField, textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceMiddle, faceRing, line, planRing } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField('way', 'Goes', { horizontal: 'through the wall', vertical: 'through the roof' }),
  textField('serves', 'Serves'),
  numberField('lengthM', 'Flue length', 'm', { max: 50 }),
  numberField('hiddenLengthM', 'Of it hidden', 'm', { max: 50 }),
  yesNoField('inspectable', 'Hidden part can be looked at'),
  yesNoField('throughOtherDwelling', 'Through another dwelling'),
  yesNoField('plumeKit', 'Plume kit'),
  numberField('aboveGroundMm', 'Above the ground outside', 'mm', { max: 50000 }),
  yesNoField('guarded', 'Guard fitted'),
];

export default definePoint({
  id: 'flue-terminal',
  version: 1,
  ...spoken('Flue terminal', fields),
  letter: 'FT',
  group: 'other',
  role: { flue: 'end' },
  hostedOnWall: true,
  assumedHeight: 'flueTerminal',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 100, depthMm: 100, heightMm: 100 },
  connections: (s) => [tail('in', 'flue', 'Flue', '60/100', [0, 0, s.heightMm / 2], 'back')],
  defaults: {
    way: 'horizontal',
    serves: '',
    lengthM: null,
    hiddenLengthM: null,
    inspectable: null,
    throughOtherDwelling: null,
    plumeKit: null,
    aboveGroundMm: null,
  },
  planSymbol: (s) => [planRing(s), planRing(s, 0.4), line(-s.widthMm / 2, 0, s.widthMm / 2, 0)],
  faceSymbol: (s) => [faceRing(s), faceRing(s, 0.5), faceMiddle(s, 'FT')],
});
