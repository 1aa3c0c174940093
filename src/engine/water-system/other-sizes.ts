import { usualSizes } from '../../catalogue/usual-sizes.ts';
import { figure, type Known } from '../../reference/figure.ts';
import { type TubeSize, tube } from '../../reference/tubes.ts';
import { addQuantities, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { contentOf } from '../water/content.ts';
import { velocity } from '../water/pipe-friction.ts';
import { waitFor } from '../water/wait.ts';
import type { HotWay } from './hot-ways.ts';
import { metresOf } from './lengths.ts';

/** A hot way with all its new copper in one size. */
export interface OtherSize {
  readonly size: TubeSize;
  readonly litres: Quantity;
  readonly wait: Quantity;
  /** m/s of the tap alone; above `limit` the size is too small. */
  readonly velocity: number;
  readonly limit: Known;
  /** It is drawn so. */
  readonly chosen: boolean;
  readonly change: readonly { readonly leg: string; readonly kind: string; readonly size: string }[];
}

const COPPER = 'copper';
/** Sizes a tap is piped in: the two smallest that every van carries. */
const TRIED = usualSizes(COPPER).slice(0, 2);

/** A piece of the way, and the size it would have. */
function tried(given: Given, way: HotWay, id: string) {
  return way.sections.flatMap((s) =>
    s.legs.flatMap((leg) => {
      const edge = given.network.edges.get(leg);
      if (!edge) return [];
      const fresh = edge.state === 'new' && edge.tube.kind === COPPER;
      return [{ edge, size: fresh ? id : edge.tube.size, changed: fresh && edge.tube.size !== id }];
    }),
  );
}

const anyNew = (given: Given, way: HotWay): boolean =>
  way.sections.some(
    (s) => s.tube.kind === COPPER && s.legs.some((leg) => given.network.edges.get(leg)?.state === 'new'),
  );

/** The ways of making the new pipe of a way; none where nothing of it is new, or a figure is not known. */
export function otherSizes(given: Given, way: HotWay, scale: string): OtherSize[] {
  const limit = figure('water-velocity', scale, 'pipe');
  const { flow } = way;
  if (flow === null || limit.is !== 'known' || !anyNew(given, way)) return [];
  return TRIED.flatMap((id): OtherSize[] => {
    const size = tube(COPPER, id);
    if (!size || size.boreMm === null) return [];
    const pieces = tried(given, way, id);
    const parts = pieces.map((p) => contentOf(metresOf(p.edge.lengthMm), p.edge.tube.kind, p.size));
    const known = parts.filter((p) => p !== null);
    if (known.length < parts.length || known.length === 0) return [];
    const litres = addQuantities(known);
    const wait = waitFor({ litres, flow, lights: way.lights }).result;
    if (!wait) return [];
    const change = pieces.filter((p) => p.changed).map((p) => ({ leg: p.edge.id, kind: COPPER, size: id }));
    const v = velocity(flow.lo / 60, size.boreMm);
    return [{ size, litres, wait, velocity: v, limit, chosen: change.length === 0, change }];
  });
}
