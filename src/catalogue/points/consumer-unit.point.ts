import { definePoint } from '../define-point.ts';
import { yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

const fields = [yesNoField('spareWay', 'Spare way')];

export default definePoint({
  id: 'consumer-unit',
  version: 1,
  ...spoken('Consumer unit', fields),
  letter: 'CU',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'consumerUnit',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 350, depthMm: 110, heightMm: 250 },
  connections: () => [],
  defaults: { spareWay: null },
  ...boxed('CU'),
});
