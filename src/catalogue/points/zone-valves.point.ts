import { definePoint } from '../define-point.ts';
import { spoken } from '../say-point.ts';
import { boxed } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

export default definePoint({
  id: 'zone-valves',
  version: 1,
  ...spoken('Zone valves', []),
  letter: 'ZV',
  group: 'other',
  role: { in: 'end', heating: 'source', water: 'source' },
  hostedOnWall: true,
  assumedHeight: 'tundish',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 250, depthMm: 100, heightMm: 150 },
  connections: (s) => [
    tail('in', 'heatingFlow', 'Flow in', '22', [0, s.depthMm / 2, 0], 'down'),
    tail('heating', 'heatingFlow', 'To heating', '22', [-s.widthMm / 2, s.depthMm / 2, s.heightMm / 2], 'left'),
    tail('water', 'heatingFlow', 'To the cylinder', '22', [s.widthMm / 2, s.depthMm / 2, s.heightMm / 2], 'right'),
  ],
  defaults: {},
  ...boxed('ZV'),
});
