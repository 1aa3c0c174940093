import { definePoint } from '../define-point.ts';
import { choiceField, textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

const fields = [
  choiceField('what', 'What it is', { switch: 'switch', spur: 'fused spur', cord: 'pull cord' }),
  textField('feeds', 'Feeds'),
  yesNoField('ipx4', 'IPX4 or better'),
];

export default definePoint({
  id: 'switch',
  version: 1,
  ...spoken('Switch or spur', fields),
  letter: 'SW',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'switch',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 86, depthMm: 40, heightMm: 86 },
  connections: () => [],
  defaults: {},
  ...boxed('SW'),
});
