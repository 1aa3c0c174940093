import { definePoint } from '../define-point.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

export default definePoint({
  id: 'electricity-meter',
  version: 1,
  ...spoken('Electricity meter', []),
  letter: 'EM',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'electricityMeter',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 130, depthMm: 120, heightMm: 220 },
  connections: () => [],
  defaults: {},
  ...boxed('EM'),
});
