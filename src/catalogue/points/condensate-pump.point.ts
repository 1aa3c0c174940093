import { definePoint } from '../define-point.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('liftM', 'Lifts up to', 'm', { max: 20 }),
  numberField('runM', 'Pumps along up to', 'm', { max: 200 }),
  yesNoField('overflowStops', 'Overflow switch stops the boiler'),
];

export default definePoint({
  id: 'condensate-pump',
  version: 1,
  ...spoken('Condensate pump', fields),
  letter: 'CP',
  group: 'drain',
  role: { in: 'end', out: 'source', boilerRelief: 'end' },
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 250, depthMm: 130, heightMm: 150 },
  connections: (s) => [
    tail('in', 'condensate', 'In', '21.5', [-s.widthMm / 4, s.depthMm / 2, s.heightMm], 'up'),
    tail('out', 'condensate', 'Hose out', '10', [s.widthMm / 4, s.depthMm / 2, s.heightMm], 'up'),
  ],
  defaults: { liftM: null, runM: null, overflowStops: null },
  ...boxed('CP'),
});
