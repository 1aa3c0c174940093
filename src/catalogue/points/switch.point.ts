import { definePoint } from '../define-point.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

export default definePoint({
  id: 'switch',
  version: 1,
  ...spoken('Switch or spur', []),
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
