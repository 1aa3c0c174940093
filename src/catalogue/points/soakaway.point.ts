import { definePoint } from '../define-point.ts';
import { choiceField, numberField, textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('fromWallMm', 'From the wall', 'mm'),
  choiceField('ground', 'Soil', { free: 'drains freely', clay: 'clay' }, 'Dig and look: water poured in must be gone.'),
  yesNoField('chippings', 'Tube in limestone chippings'),
  textField('soil', 'Soil found, in words'),
];

export default definePoint({
  id: 'soakaway',
  version: 1,
  ...spoken('Soakaway', fields),
  letter: 'SA',
  group: 'drain',
  role: { condensate: 'end' },
  hostedOnWall: false,
  assumedHeight: 'gully',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 300, depthMm: 300, heightMm: 400 },
  connections: (s) => [tail('in', 'condensate', 'In', '32', [0, s.depthMm / 2, s.heightMm], 'up')],
  defaults: { fromWallMm: null, ground: null, chippings: null, soil: '' },
  ...boxed('SA'),
});
