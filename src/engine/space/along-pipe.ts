import { toHouse } from '../../geometry/hosting.ts';
import { clipToArea } from '../../geometry/outlines.ts';
import { type PointBox, segmentToPoint } from '../../geometry/point-box.ts';
import { sub3 } from '../../geometry/vec.ts';
import { type Edge, otherEnd } from '../../network/network.ts';
import { constant } from '../../reference/figure.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { faceOf } from './sited.ts';

/** Where a thing that is drawn on a pipe sits along it. */
export interface OnPipe {
  /** From where it is counted, mm along the pipe. */
  readonly mm: Quantity;
  /** Counted from the outlet, or from where the pipe comes into the house when the outlet is outside. */
  readonly from: 'outlet' | 'entry';
  /** No pipe leaves before it. */
  readonly beforeBranch: boolean;
}

const ON_PIPE_MM = constant('bonding', 'on the pipe', 'mm');

interface Step {
  readonly vertex: string;
  readonly by: string | null;
  readonly lo: number;
  readonly hi: number | null;
  readonly branched: boolean;
  /** Has come into a closed space by now. */
  readonly inside: boolean;
}

/** How far along a straight pipe it comes into the room that it ends in; null where it ends in none, or was in it. */
function entryOf(given: Given, edge: Edge, from: string): number | null {
  const [a, b] = [from, otherEnd(edge, from)].map((v) => given.network.vertices.get(v)?.place ?? null);
  const face = a && b && faceOf(given, b.storey, b.at);
  if (!a || !b || !face) return null;
  const [first] = clipToArea(a.at, b.at, face.outline, face.holes);
  return first ? first[0] * Math.hypot(b.at.x - a.at.x, b.at.y - a.at.y, b.at.z - a.at.z) : 0;
}

/** Along a leg to where it passes a body; null where it stays off it. */
function meets(given: Given, edge: Edge, from: string, body: PointBox): number | null {
  const [a, b] = [from, otherEnd(edge, from)].map((v) => given.network.vertices.get(v)?.place ?? null);
  if (edge.kind !== 'leg' || !a || !b) return null;
  if (segmentToPoint({ a: a.at, b: b.at }, body).distance > ON_PIPE_MM) return null;
  // A clamp has a width: its middle is what is measured to.
  const { maxY, maxZ } = body.local;
  const middle = toHouse(body.frame, { x: 0, y: maxY / 2, z: maxZ / 2 });
  const [way, to] = [sub3(b.at, a.at), sub3(middle, a.at)];
  const long = Math.hypot(way.x, way.y, way.z);
  const along = long === 0 ? 0 : (way.x * to.x + way.y * to.y + way.z * to.z) / long;
  return Math.min(long, Math.max(0, along));
}

/**
 * From an outlet along the pipes of one service to a body that is drawn on one of them, the fewest pipes first; null
 * where none passes it. `outside`: the outlet stands outside, so that what counts begins where the pipe comes in.
 */
export function alongPipe(given: Given, outlet: string, body: PointBox, outside: boolean): OnPipe | null {
  const { vertices, edges } = given.network;
  const seen = new Set<string>();
  const todo: Step[] = [{ vertex: outlet, by: null, lo: 0, hi: 0, branched: false, inside: !outside }];
  for (let step = todo.shift(); step; step = todo.shift()) {
    const here = step;
    const on = (vertices.get(here.vertex)?.edges ?? []).filter((e) => e !== here.by && !seen.has(e));
    const branched = here.branched || on.length > 1;
    for (const id of on) {
      const edge = edges.get(id);
      if (!edge) continue;
      seen.add(id);
      const entry = here.inside ? null : entryOf(given, edge, here.vertex);
      const at = meets(given, edge, here.vertex, body);
      const early = entry !== null && at !== null && at < entry;
      const base = entry === null || early ? here : { lo: -entry, hi: -entry };
      if (at !== null) {
        const from = outside && !early && (here.inside || entry !== null) ? 'entry' : 'outlet';
        const mm = between(base.lo + at, base.hi === null ? null : base.hi + at, 'mm', 0, 'derived', base.lo + at);
        return { mm, from, beforeBranch: !branched };
      }
      const more = edge.lengthMm;
      todo.push({
        vertex: otherEnd(edge, here.vertex),
        by: id,
        lo: base.lo + more.lo,
        hi: base.hi === null || more.hi === null ? null : base.hi + more.hi,
        branched,
        inside: here.inside || entry !== null,
      });
    }
  }
  return null;
}
