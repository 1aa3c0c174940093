import { definePoint } from '../define-point.ts';
import { numberField, textField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [numberField('fromWallMm', 'From the wall', 'mm'), textField('soil', 'Soil found')];

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
  defaults: { fromWallMm: null, soil: '' },
  ...boxed('SA'),
});
