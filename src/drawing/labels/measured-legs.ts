import type { Plan } from '../../plan/plan.ts';
import type { Fragment, Vec, Wish } from '../display-list.ts';

/** From the pipe to its measured line, in paper mm. */
const AWAY_MM = 6;
const LEAST_MM = 1;

/** Lengths of the legs of some runs, centre to centre, as they lie in the view. */
export function measuredLegs(
  plan: Plan,
  fragments: readonly Fragment[],
  runs: ReadonlySet<string>,
): { id: string; wish: Extract<Wish, { w: 'dimension' }> }[] {
  return fragments.flatMap((fragment) => {
    const leg = fragment.map === 'legs' ? plan.legs[fragment.id] : undefined;
    if (!leg || fragment.layer !== 'run' || !runs.has(leg.run)) return [];
    return fragment.items.flatMap((item) => {
      if (item.t !== 'line') return [];
      const [a, b] = [item.pts[0], item.pts.at(-1)];
      const mm = a && b ? Math.hypot(a[0] - b[0], a[1] - b[1]) : 0;
      if (!a || !b || mm < LEAST_MM) return [];
      // Over a line that lies across, to the left of one that stands: where the figure is read.
      const n: Vec = [-(b[1] - a[1]) / mm, (b[0] - a[0]) / mm];
      const side: Vec = n[1] > 1e-6 || (Math.abs(n[1]) <= 1e-6 && n[0] < 0) ? n : [-n[0], -n[1]];
      const wish = {
        w: 'dimension',
        a,
        b,
        side,
        awayMm: AWAY_MM,
        text: Math.round(mm).toString(),
        unsure: leg.sureness === 'assumed',
        measures: { of: 'leg', id: leg.id },
      } as const;
      return [{ id: fragment.id, wish }];
    });
  });
}
