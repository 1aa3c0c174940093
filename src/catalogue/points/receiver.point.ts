import { definePoint } from '../define-point.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';

export default definePoint({
  id: 'receiver',
  version: 1,
  ...spoken('Receiver of the thermostat', []),
  letter: 'RX',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'switch',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 150, depthMm: 35, heightMm: 90 },
  connections: () => [],
  defaults: {},
  ...boxed('RX'),
});
