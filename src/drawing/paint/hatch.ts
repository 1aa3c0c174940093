import type { Vec } from '../display-list.ts';

/**
 * Parallel strokes at 45 degrees across a shape, cut to it by the even-odd rule.
 * `offsets` are the places of the strokes within one `step`, so twin slants are two offsets.
 */
export function slants(rings: readonly (readonly Vec[])[], step: number, offsets: readonly number[]): [Vec, Vec][] {
  const edges: [Vec, Vec][] = [];
  let lo = Number.POSITIVE_INFINITY;
  let hi = Number.NEGATIVE_INFINITY;
  for (const ring of rings) {
    ring.forEach((p, i) => {
      edges.push([p, ring[(i + 1) % ring.length] ?? p]);
      lo = Math.min(lo, p[0] + p[1]);
      hi = Math.max(hi, p[0] + p[1]);
    });
  }
  const found: [Vec, Vec][] = [];
  if (!(step > 0) || !Number.isFinite(lo)) return found;
  for (let base = Math.floor(lo / step) * step; base < hi; base += step) {
    for (const offset of offsets) {
      const level = base + offset;
      const cuts: Vec[] = [];
      for (const [a, b] of edges) {
        const sa = a[0] + a[1] - level;
        const sb = b[0] + b[1] - level;
        if (sa < 0 === sb < 0) continue;
        const t = sa / (sa - sb);
        cuts.push([a[0] + (b[0] - a[0]) * t, a[1] + (b[1] - a[1]) * t]);
      }
      cuts.sort((p, q) => p[0] - q[0]);
      for (let i = 0; i + 1 < cuts.length; i += 2) found.push([cuts[i] as Vec, cuts[i + 1] as Vec]);
    }
  }
  return found;
}
