import { definePoint } from '../define-point.ts';
import { yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

const fields = [yesNoField('wireless', 'Wireless')];

export default definePoint({
  id: 'thermostat',
  version: 1,
  ...spoken('Room thermostat', fields),
  letter: 'TH',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'switch',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 90, depthMm: 30, heightMm: 90 },
  connections: () => [],
  defaults: { wireless: null },
  ...boxed('TH'),
});
