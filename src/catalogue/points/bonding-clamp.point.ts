import { definePoint } from '../define-point.ts';
import { choiceField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceRing, line, planRing } from '../symbol-parts.ts';

const fields = [
  choiceField('pipe', 'On', { gas: 'gas pipe', water: 'water pipe', other: 'something else' }),
  numberField('conductorMm2', 'Conductor', 'mm2'),
  numberField('fromMeterMm', 'From the meter outlet', 'mm'),
  yesNoField('beforeBranch', 'Before any branch'),
  choiceField('incoming', 'Pipe comes in as', { metal: 'metal', plastic: 'plastic' }),
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
