import { definePoint } from '../define-point.ts';
import { numberField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planBox, ring } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  numberField('heatingKw', 'Heating behind them', 'kW', { max: 100 }),
  numberField('lossKPa', 'Lost behind them', 'kPa', { max: 100, help: 'At the design flow, there and back.' }),
  numberField('litresBehind', 'Water behind them', 'litres', { max: 1000 }),
];

export default definePoint({
  id: 'old-tails',
  version: 1,
  ...spoken('Old tails', fields),
  letter: 'OT',
  group: 'other',
  role: { heatingFlow: 'end', heatingReturn: 'source', hot: 'end', cold: 'source' },
  hostedOnWall: true,
  assumedHeight: 'skirting',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 300, depthMm: 80, heightMm: 60 },
  connections: (s) => [
    tail('flow', 'heatingFlow', 'Heating flow', '22', [-s.widthMm * 0.4, s.depthMm / 2, s.heightMm], 'up'),
    tail('hot', 'hot', 'Hot', '15', [-s.widthMm * 0.13, s.depthMm / 2, s.heightMm], 'up'),
    tail('cold', 'cold', 'Cold', '15', [s.widthMm * 0.13, s.depthMm / 2, s.heightMm], 'up'),
    tail('return', 'heatingReturn', 'Heating return', '22', [s.widthMm * 0.4, s.depthMm / 2, s.heightMm], 'up'),
  ],
  defaults: { heatingKw: null },
  planSymbol: (s) => [
    planBox(s),
    ...[-0.4, -0.13, 0.13, 0.4].map((k) => ring(k * s.widthMm, s.depthMm / 2, s.widthMm / 25)),
  ],
  faceSymbol: (s) => [
    faceBox(s),
    ...[-0.4, -0.13, 0.13, 0.4].map((k) => line(k * s.widthMm, 0, k * s.widthMm, s.heightMm)),
  ],
});
