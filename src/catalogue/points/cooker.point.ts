import { definePoint } from '../define-point.ts';
import { fromSheet, inputBasisField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, line, planBox, ring } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('inputKw', 'Heat input', 'kW', { max: 60 }),
  inputBasisField,
  yesNoField('hose', 'On a hose with a bayonet'),
  ...fromSheet(
    numberField('leastInletMbar', 'Least gas pressure at its inlet', 'mbar', { max: 50 }),
    numberField('clearSidesMm', 'Clear each side', 'mm', { max: 1000 }),
    numberField('liftKg', 'Weight to lift', 'kg', { max: 200 }),
  ),
];

export default definePoint({
  id: 'cooker',
  version: 1,
  ...spoken('Cooker', fields),
  letter: 'CK',
  group: 'appliance',
  role: { gas: 'end' },
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 600, depthMm: 600, heightMm: 900 },
  connections: (s) => [tail('gas', 'gas', 'Gas', '15', [0, 30, s.heightMm * 0.8], 'back')],
  defaults: { inputKw: null, inputBasis: null, hose: null },
  gasInputs: ['inputKw'],
  gasClass: 'cooker',
  planSymbol: (s) => [
    planBox(s),
    ...[-1, 1].flatMap((side) =>
      [0.3, 0.7].map((far) => ring((side * s.widthMm) / 4, s.depthMm * far, Math.min(s.widthMm, s.depthMm) / 9)),
    ),
  ],
  faceSymbol: (s) => [
    faceBox(s),
    line(-s.widthMm / 2, s.heightMm * 0.85, s.widthMm / 2, s.heightMm * 0.85),
    faceMiddle(s, 'CK'),
  ],
});
