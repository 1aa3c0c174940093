import type { Vec } from '../display-list.ts';

/** Parts of an endless line through `through` along `way` that lie inside rings, by the even-odd rule. */
export function clipLine(rings: readonly (readonly Vec[])[], through: Vec, way: Vec): [Vec, Vec][] {
  const n: Vec = [-way[1], way[0]];
  const cuts: number[] = [];
  for (const ring of rings) {
    ring.forEach((a, i) => {
      const b = ring[(i + 1) % ring.length] ?? a;
      const da = (a[0] - through[0]) * n[0] + (a[1] - through[1]) * n[1];
      const db = (b[0] - through[0]) * n[0] + (b[1] - through[1]) * n[1];
      if (da < 0 === db < 0) return;
      const t = da / (da - db);
      const x = a[0] + (b[0] - a[0]) * t;
      const y = a[1] + (b[1] - a[1]) * t;
      cuts.push((x - through[0]) * way[0] + (y - through[1]) * way[1]);
    });
  }
  cuts.sort((p, q) => p - q);
  const at = (s: number): Vec => [through[0] + way[0] * s, through[1] + way[1] * s];
  const parts: [Vec, Vec][] = [];
  for (let i = 0; i + 1 < cuts.length; i += 2) parts.push([at(cuts[i] as number), at(cuts[i + 1] as number)]);
  return parts;
}
