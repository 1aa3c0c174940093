import { definePoint } from '../define-point.ts';
import { fromSheet, inputBasisField, numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, planBox, ring } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('inputKw', 'Heat input', 'kW', { max: 40 }),
  inputBasisField,
  ...fromSheet(
    numberField('leastInletMbar', 'Least gas pressure at its inlet', 'mbar', { max: 50 }),
    numberField('clearSidesMm', 'Clear each side', 'mm', { max: 1000 }),
    numberField('liftKg', 'Weight to lift', 'kg', { max: 100 }),
  ),
];

export default definePoint({
  id: 'hob',
  version: 1,
  ...spoken('Hob', fields),
  letter: 'H',
  group: 'appliance',
  role: { gas: 'end' },
  hostedOnWall: true,
  assumedHeight: 'hobTail',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 580, depthMm: 510, heightMm: 60 },
  connections: () => [tail('gas', 'gas', 'Gas', '15', [0, 60, 0], 'down')],
  defaults: { inputKw: null, inputBasis: null },
  gasInputs: ['inputKw'],
  gasClass: 'hob',
  planSymbol: (s) => [
    planBox(s),
    ...[-1, 1].flatMap((side) =>
      [0.27, 0.73].map((far) => ring((side * s.widthMm) / 4, s.depthMm * far, Math.min(s.widthMm, s.depthMm) / 8)),
    ),
  ],
  faceSymbol: (s) => [faceBox(s), faceMiddle(s, 'H')],
});
