import { definePoint } from '../define-point.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('setBar', 'Set to', 'bar', { max: 10 }),
  ...[
    yesNoField('hasStrainer', 'Strainer in it'),
    yesNoField('hasCheck', 'Check valve in it'),
    yesNoField('hasRelief', 'Expansion relief in it'),
  ].map((spec) => ({
    ...spec,
    under: 'What it holds',
    help: 'Not told: taken to hold it, as such a group usually does.',
  })),
];

export default definePoint({
  id: 'inlet-group',
  version: 1,
  ...spoken('Cold inlet group', fields),
  letter: 'IG',
  group: 'other',
  role: { in: 'end', out: 'source', balanced: 'source', relief: 'source' },
  hostedOnWall: true,
  assumedHeight: 'tundish',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 200, depthMm: 100, heightMm: 300 },
  connections: (s) => [
    tail('in', 'cold', 'Cold main in', '22', [0, s.depthMm / 2, 0], 'down'),
    tail('out', 'cold', 'Cold to the vessel', '22', [0, s.depthMm / 2, s.heightMm], 'up'),
    tail('balanced', 'balancedCold', 'Balanced cold', '22', [s.widthMm / 2, s.depthMm / 2, s.heightMm / 2], 'right'),
    tail('relief', 'discharge', 'Expansion relief', '15', [-s.widthMm / 2, s.depthMm / 2, s.heightMm * 0.75], 'left'),
  ],
  defaults: { setBar: null },
  ...boxed('IG'),
});
