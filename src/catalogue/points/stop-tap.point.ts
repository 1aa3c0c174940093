import { definePoint } from '../define-point.ts';
import { BONDING, choiceField, found, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { bowTie, line } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('standingBar', 'Standing pressure', 'bar', { max: 20 }),
  numberField('workingBar', 'Working pressure', 'bar', { max: 20 }),
  numberField('flowLPerMin', 'Flow at the first tap', 'litres a minute', { max: 100 }),
  yesNoField('turns', 'Turns off by hand'),
  found(choiceField('incoming', 'Main comes in as', { metal: 'metal', plastic: 'plastic' })),
  found(choiceField('mainBonding', 'Main bonding', BONDING, 'Only where no clamp is drawn.')),
];

export default definePoint({
  id: 'stop-tap',
  version: 1,
  ...spoken('Stop tap', fields),
  letter: 'ST',
  group: 'source',
  role: { cold: 'source' },
  hostedOnWall: true,
  assumedHeight: 'stopTap',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 100, depthMm: 60, heightMm: 100 },
  connections: (s) => [tail('outlet', 'cold', 'Outlet', '22', [0, s.depthMm / 2, s.heightMm], 'up')],
  defaults: { standingBar: null, workingBar: null, flowLPerMin: null, turns: null },
  planSymbol: (s) => [...bowTie(s.widthMm, s.depthMm / 2, s.depthMm / 2)],
  faceSymbol: (s) => [...bowTie(s.widthMm, s.heightMm / 3, s.heightMm / 3), line(0, s.heightMm / 3, 0, s.heightMm)],
});
