import { definePoint } from '../define-point.ts';
import { BONDING, choiceField, found, numberField, textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  choiceField(
    'meter',
    'Meter',
    { 'G2.5': 'G2.5 or U4', G4: 'G4 or U6', E6: 'E6 (ultrasonic)', G10: 'G10 or U16' },
    'As its plate says.',
  ),
  numberField('ratedM3PerH', 'Meter rated for', 'm3/h'),
  textField('seen', 'What was seen'),
  found(yesNoField('controlReached', 'Emergency control in reach')),
  found(yesNoField('controlTurns', 'Emergency control turns by hand')),
  found(choiceField('mainBonding', 'Main bonding', BONDING, 'Only where no clamp is drawn.')),
];

export default definePoint({
  id: 'gas-meter',
  version: 1,
  ...spoken('Gas meter', fields),
  letter: 'M',
  group: 'source',
  role: { gas: 'source' },
  hostedOnWall: true,
  assumedHeight: 'meter',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 300, depthMm: 230, heightMm: 400 },
  connections: (s) => [tail('outlet', 'gas', 'Outlet', '22', [s.widthMm / 4, s.depthMm / 2, s.heightMm], 'up')],
  defaults: { meter: null, ratedM3PerH: null, seen: '' },
  ...boxed('M'),
});
