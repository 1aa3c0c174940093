import { boxTree } from '../../geometry/box-index.ts';
import { flatBox } from '../../geometry/boxes.ts';
import { openingBox } from '../../geometry/opening-box.ts';
import { pointBox } from '../../geometry/point-box.ts';
import type { Opening, Wall } from '../../plan/records/building.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { FACED_MM, LOOKED_MM, NEAR_FACE_MM } from './candidate.ts';
import type { Terminal } from './terminals.ts';

/** What stands in the case near enough to a terminal, as seen from above, to be looked at. */
export interface Neighbourhood {
  readonly points: readonly Point[];
  readonly walls: readonly Wall[];
  readonly openings: readonly Opening[];
}

interface Around {
  near(t: Terminal): Neighbourhood;
}

const RADIUS_MM = Math.max(FACED_MM, LOOKED_MM, NEAR_FACE_MM);

function around({ plan, network }: Given): Around {
  const points = Object.values(plan.points).flatMap((it) => {
    const box = network.alive.has('points', it.id) ? pointBox(plan, it) : undefined;
    return box ? [{ it, box: flatBox(box.footprint, 0) }] : [];
  });
  const walls = Object.values(plan.walls).flatMap((it) =>
    network.alive.has('walls', it.id) ? [{ it, box: flatBox([it.a, it.b], it.thicknessMm) }] : [],
  );
  const openings = Object.values(plan.openings).flatMap((it) => {
    const box = network.alive.has('openings', it.id) ? openingBox(plan, it.id) : undefined;
    return box ? [{ it, box: flatBox(box.footprint, 0) }] : [];
  });
  const [p, w, o] = [boxTree(points), boxTree(walls), boxTree(openings)];
  const inOrder = <T>(found: readonly { readonly order: number; readonly entry: { readonly it: T } }[]): T[] =>
    [...found].sort((a, b) => a.order - b.order).map(({ entry }) => entry.it);
  return {
    near(t) {
      const box = flatBox([t.at], RADIUS_MM + t.point.size.widthMm);
      return { points: inOrder(p.near(box)), walls: inOrder(w.near(box)), openings: inOrder(o.near(box)) };
    },
  };
}

const known = new WeakMap<Given, Around>();
const found = new WeakMap<Terminal, Neighbourhood>();

/** Looked up once for each terminal, out of what is placed once for all. */
export function neighbourhood(given: Given, t: Terminal): Neighbourhood {
  const before = found.get(t);
  if (before) return before;
  const all = known.get(given) ?? around(given);
  known.set(given, all);
  const near = all.near(t);
  found.set(t, near);
  return near;
}
