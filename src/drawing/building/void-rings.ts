import type { Void } from '../../plan/records/building.ts';
import type { Vec } from '../display-list.ts';

export const outlineRings = (v: Pick<Void, 'outline' | 'holes'>): Vec[][] =>
  [v.outline, ...v.holes].map((ring) => ring.map((p): Vec => [p.x, p.y]));
