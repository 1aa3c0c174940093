import { definePoint } from '../define-point.ts';
import { yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

const fields = [yesNoField('shaver', 'Shaver socket')];

export default definePoint({
  id: 'socket',
  version: 1,
  ...spoken('Socket', fields),
  letter: 'S',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'socket',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 146, depthMm: 40, heightMm: 86 },
  connections: () => [],
  defaults: {},
  ...boxed('S'),
});
