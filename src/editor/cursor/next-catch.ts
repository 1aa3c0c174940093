import type { Box, Vec } from '../../drawing/display-list.ts';
import type { Entry } from '../hit/pipework-entries.ts';
import type { ViewIndex } from '../hit/view-index.ts';

/** Nearer than this it is where the cross is already, mm. */
const HERE_MM = 5;
/** A house is searched outwards: most jumps end in the same room. */
const REACHES_MM = [2500, 10_000, Number.POSITIVE_INFINITY];
/** Off the way counts so many times. */
const ASIDE = 2;

const middleOf = (ring: readonly Vec[]): Vec => {
  const n = Math.max(ring.length, 1);
  return [ring.reduce((sum, [x]) => sum + x, 0) / n, ring.reduce((sum, [, y]) => sum + y, 0) / n];
};

/** Places of a record that something can be started on, ended at or chosen by; of tails only those of a service, where one is told. */
function spotsOf({ kind, shape, gone, service: of }: Entry, service: string | null): readonly Vec[] {
  if (gone || (kind === 'connection' && service !== null && of !== service)) return [];
  if (kind === 'connection' || kind === 'node' || kind === 'item' || kind === 'photo')
    return shape.is === 'spot' ? [shape.at] : [];
  // What stands about has no place that a pipe starts on but its tails.
  if (shape.is !== 'area' || (kind === 'point' && service !== null)) return [];
  if (kind === 'wall' || kind === 'opening' || kind === 'void') return shape.ring;
  return kind === 'point' ? [middleOf(shape.ring)] : [];
}

function boxAhead([x, y]: Vec, [dx, dy]: Vec, reach: number): Box {
  const [ahead, aside] = [reach, reach];
  return dx !== 0
    ? { minX: dx > 0 ? x : x - ahead, maxX: dx > 0 ? x + ahead : x, minY: y - aside, maxY: y + aside }
    : { minX: x - aside, maxX: x + aside, minY: dy > 0 ? y : y - ahead, maxY: dy > 0 ? y + ahead : y };
}

/** The nearest place ahead that a tool would catch, within 45 degrees of the way; null where there is none. */
export function nextCatch(index: ViewIndex, from: Vec, way: Vec, service: string | null = null): Vec | null {
  for (const reach of REACHES_MM) {
    let best: { readonly at: Vec; readonly cost: number } | null = null;
    for (const entry of index.near(boxAhead(from, way, reach))) {
      for (const at of spotsOf(entry, service)) {
        const [dx, dy] = [at[0] - from[0], at[1] - from[1]];
        const ahead = dx * way[0] + dy * way[1];
        const aside = Math.abs(dx * way[1] - dy * way[0]);
        if (ahead < HERE_MM || aside > ahead) continue;
        const cost = ahead + ASIDE * aside;
        if (best === null || cost < best.cost) best = { at, cost };
      }
    }
    if (best) return best.at;
  }
  return null;
}
