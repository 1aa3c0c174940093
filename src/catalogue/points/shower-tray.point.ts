import { definePoint } from '../define-point.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

const fields = [
  yesNoField('level', 'Level floor, no tray', 'Distances then count from the shower, set at the middle of its back.'),
  numberField('headMm', 'Fixed shower head above the floor', 'mm', { max: 4000 }),
];

export default definePoint({
  id: 'shower-tray',
  version: 1,
  ...spoken('Shower tray', fields),
  letter: 'TR',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 900, depthMm: 900, heightMm: 100 },
  connections: () => [],
  defaults: { level: null, headMm: null },
  ...boxed('TR'),
});
