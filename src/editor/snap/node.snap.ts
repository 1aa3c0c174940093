import { servicesAt } from '../commands/legs-at.ts';
import { defineSnap } from './define-snap.ts';

/** Corners, tees and open ends. Of several over one another the one nearest to the height in hand is meant. */
export default defineSnap({
  id: 'node',
  priority: 20,
  find: ({ plan, plane, near, service, depth }) =>
    near
      .filter((e) => e.kind === 'node' && (service === undefined || servicesAt(plan, e.id).has(service)))
      .map((e) => ({ e, off: e.ends[0] ? Math.abs(plane.depth(e.ends[0]) - depth) : 0 }))
      .sort((a, b) => a.off - b.off)
      .flatMap(({ e }) => {
        const xyz = e.ends[0];
        if (!xyz || e.shape.is !== 'spot') return [];
        return [
          { is: 'place', at: e.shape.at, xyz, target: { is: 'node', node: e.id }, word: 'end or corner' } as const,
        ];
      }),
});
