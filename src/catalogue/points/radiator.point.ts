import { definePoint } from '../define-point.ts';
import { choiceField, fromSheet, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, line, planBox } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('outputKw', 'Heat output', 'kW', { max: 20, help: 'At the design temperatures of the job.' }),
  choiceField('panels', 'Panels', { single: 'one', double: 'two' }),
  ...fromSheet(numberField('litres', 'Holds', 'litres', { max: 60 })),
  yesNoField('thermostaticValve', 'Thermostatic valve'),
];

export default definePoint({
  id: 'radiator',
  version: 1,
  ...spoken('Radiator', fields),
  letter: 'R',
  group: 'appliance',
  role: { heatingFlow: 'end', heatingReturn: 'source' },
  hostedOnWall: true,
  assumedHeight: 'radiatorTail',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 1000, depthMm: 100, heightMm: 600 },
  connections: (s) => [
    tail('flow', 'heatingFlow', 'Flow', '15', [-s.widthMm / 2, s.depthMm / 2, 50], 'down'),
    tail('return', 'heatingReturn', 'Return', '15', [s.widthMm / 2, s.depthMm / 2, 50], 'down'),
  ],
  defaults: { outputKw: null, thermostaticValve: null },
  planSymbol: (s) => [planBox(s), line(-s.widthMm / 2, s.depthMm / 2, s.widthMm / 2, s.depthMm / 2)],
  faceSymbol: (s) => [
    faceBox(s),
    ...[-0.25, 0, 0.25].map((k) => line(k * s.widthMm, 0, k * s.widthMm, s.heightMm)),
    faceMiddle(s, 'R'),
  ],
});
