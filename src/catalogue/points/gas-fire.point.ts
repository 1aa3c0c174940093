import { definePoint } from '../define-point.ts';
import { fromSheet, inputBasisField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('inputKw', 'Heat input', 'kW', { max: 20 }),
  inputBasisField,
  yesNoField('roomSealed', 'Room-sealed'),
  ...fromSheet(
    numberField('leastInletMbar', 'Least gas pressure at its inlet', 'mbar', { max: 50 }),
    numberField('clearFrontMm', 'Clear in front', 'mm', { max: 3000 }),
    numberField('liftKg', 'Weight to lift', 'kg', { max: 100 }),
  ),
];

export default definePoint({
  id: 'gas-fire',
  version: 1,
  ...spoken('Gas fire', fields),
  letter: 'GF',
  group: 'appliance',
  role: { gas: 'end' },
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 500, depthMm: 250, heightMm: 600 },
  connections: (s) => [tail('gas', 'gas', 'Gas', '8', [-s.widthMm / 2, s.depthMm / 2, 50], 'left')],
  defaults: { inputKw: null, inputBasis: null, roomSealed: null },
  gasInputs: ['inputKw'],
  gasClass: 'fire',
  ...boxed('GF'),
});
