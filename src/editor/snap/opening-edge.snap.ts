import type { Vec } from '../../drawing/display-list.ts';
import { defineSnap } from './define-snap.ts';

/** Corners of doors and windows. */
export default defineSnap({
  id: 'openingEdge',
  priority: 40,
  find: ({ near }) =>
    near.flatMap((e) => {
      if (e.kind !== 'opening' || e.shape.is !== 'area') return [];
      return e.shape.ring.map((at: Vec) => ({ is: 'place', at, word: 'edge of opening' }) as const);
    }),
});
