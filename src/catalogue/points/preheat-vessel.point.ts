import { definePoint } from '../define-point.ts';
import { choiceField, found, fromSheet, numberField, textField, yesNoField } from '../field-specs.ts';
import { expansionField, kvField, preheatFields } from '../preheat-fields.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('litres', 'Holds', 'litres', { max: 2000 }),
  yesNoField('unvented', 'Unvented'),
  choiceField('valveOutlet', 'Safety valve outlet', { 'G1/2': 'G 1/2', 'G3/4': 'G 3/4', G1: 'G 1' }),
  found(
    choiceField(
      'tundish',
      'Tundish',
      { found: 'found on survey', missing: 'missing' },
      'Only where none is drawn: what was seen at its safety valve.',
    ),
  ),
  textField('heatedBy', 'Heated by'),
  expansionField,
  ...preheatFields,
  ...fromSheet(
    kvField,
    numberField('inletMaxBar', 'Cold inlet, highest pressure', 'bar', { max: 20 }),
    numberField('emptyKg', 'Weight to lift, empty', 'kg', { max: 500 }),
    numberField('fullKg', 'Weight to carry, full', 'kg', { max: 3000 }),
  ),
];

export default definePoint({
  id: 'preheat-vessel',
  version: 1,
  ...spoken('Preheat vessel', fields),
  letter: 'PV',
  group: 'appliance',
  role: { cold: 'end', preheated: 'source', discharge: 'source' },
  hostedOnWall: false,
  assumedHeight: 'cylinder',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 500, depthMm: 500, heightMm: 1000 },
  connections: (s) => [
    tail('coldIn', 'cold', 'Cold in', '22', [-s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.15], 'left'),
    tail('out', 'preheated', 'Preheated out', '22', [0, s.depthMm / 2, s.heightMm], 'up'),
    tail('relief', 'discharge', 'Safety valve', '15', [-s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.85], 'left'),
  ],
  defaults: { litres: null, unvented: true, valveOutlet: null, tundish: null, heatedBy: '' },
  ...round('PV'),
});
