import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import type { IsoDrawing } from './iso-drawing.ts';

/**
 * Every pipe of a drawing in the order of someone who walks along it: run by run in the order of the plan, each from one
 * of its ends, a branch after what it leaves.
 */
export function isoWalk(drawing: IsoDrawing, runs: readonly string[]): readonly DrawnLeg[] {
  const order: DrawnLeg[] = [];
  for (const run of runs) {
    const mine = drawing.legs.filter((l) => l.run === run);
    const left = new Set(mine);
    const ends = (l: DrawnLeg): number =>
      [l.vertexA, l.vertexB].filter((v) => mine.filter((m) => m.vertexA === v || m.vertexB === v).length === 1).length;
    // Starts at an end that was told first, so that it goes the way the run was told.
    const starts = [...mine].sort((p, q) => ends(q) - ends(p) || (p.record.id < q.record.id ? -1 : 1));
    const walk = (leg: DrawnLeg): void => {
      if (!left.delete(leg)) return;
      order.push(leg);
      for (const vertex of [leg.vertexA, leg.vertexB]) {
        for (const next of drawing.at.get(vertex) ?? []) if (left.has(next)) walk(next);
      }
    };
    for (const leg of starts) walk(leg);
  }
  return order;
}
