import { definePoint } from '../define-point.ts';
import { numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

const fields = [numberField('headMm', 'Fixed shower head above the floor', 'mm', { max: 4000 })];

/** The tub itself: what is kept away from water is measured from its edge. Its taps are a point of their own. */
export default definePoint({
  id: 'bath',
  version: 1,
  ...spoken('Bath', fields),
  letter: 'BH',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 1700, depthMm: 700, heightMm: 550 },
  connections: () => [],
  defaults: { headMm: null },
  ...boxed('BH'),
});
