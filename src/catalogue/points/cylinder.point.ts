import { definePoint } from '../define-point.ts';
import { choiceField, found, fromSheet, numberField, yesNoField } from '../field-specs.ts';
import { expansionField, kvField, preheatFields } from '../preheat-fields.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('litres', 'Holds', 'litres', { max: 2000 }),
  numberField('coilKw', 'Coil', 'kW', { max: 60 }),
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
  expansionField,
  ...preheatFields,
  ...fromSheet(
    numberField('coilLitres', 'Heating water in the coil', 'litres', { max: 100 }),
    kvField,
    numberField('inletMaxBar', 'Cold inlet, highest pressure', 'bar', { max: 20 }),
    numberField('inletMaxC', 'Inlet water, warmest', '°C', {
      max: 110,
      help: 'What its cold tail may be fed with: it limits preheated water.',
    }),
    numberField('emptyKg', 'Weight to lift, empty', 'kg', { max: 500 }),
    numberField('fullKg', 'Weight to carry, full', 'kg', { max: 3000 }),
  ),
];

export default definePoint({
  id: 'cylinder',
  version: 1,
  ...spoken('Hot water cylinder', fields),
  letter: 'CY',
  group: 'appliance',
  role: {
    heatingFlow: 'end',
    heatingReturn: 'source',
    cold: 'end',
    preheated: 'end',
    hot: 'source',
    discharge: 'source',
  },
  hostedOnWall: false,
  assumedHeight: 'cylinder',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 550, depthMm: 550, heightMm: 1500 },
  connections: (s) => [
    tail('coilFlow', 'heatingFlow', 'Coil flow', '22', [s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.55], 'right'),
    tail(
      'coilReturn',
      'heatingReturn',
      'Coil return',
      '22',
      [s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.25],
      'right',
    ),
    tail('coldIn', 'cold', 'Cold in', '22', [-s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.15], 'left'),
    tail('hotOut', 'hot', 'Hot out', '22', [0, s.depthMm / 2, s.heightMm], 'up'),
    tail('relief', 'discharge', 'Safety valve', '15', [-s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.85], 'left'),
  ],
  defaults: { litres: null, coilKw: null, unvented: true, valveOutlet: null, tundish: null },
  ...round('CY'),
});
