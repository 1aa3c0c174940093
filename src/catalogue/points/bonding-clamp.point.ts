import { definePoint } from '../define-point.ts';
import { numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceRing, line, planRing } from '../symbol-parts.ts';

const fields = [
  numberField('conductorMm2', 'Conductor', 'mm2'),
  numberField('fromMeterMm', 'From the meter outlet', 'mm'),
];

export default definePoint({
  id: 'bonding-clamp',
  version: 1,
  ...spoken('Bonding clamp', fields),
  letter: 'BC',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'meter',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 60, depthMm: 60, heightMm: 60 },
  connections: () => [],
  defaults: { conductorMm2: null, fromMeterMm: null },
  planSymbol: (s) => [planRing(s), line(0, 0, 0, s.depthMm)],
  faceSymbol: (s) => [faceRing(s), line(0, 0, 0, s.heightMm)],
});
