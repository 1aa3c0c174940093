import type { Illegal, IllegalKind } from '../../../network/trace.ts';
import type { Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { sayAll, sayPoint, sayRun } from '../../say-names.ts';

/** Everything of one kind that the tracing could not take as drawn, as faults. */
export function illegal(given: Given, kind: IllegalKind, outcome: Fault['outcome']): Fault[] {
  // Where two circuits meet, each of them tells of the one place.
  const told = given.traces.flatMap((t) => t.illegal).filter((i) => i.kind === kind);
  const places = new Map(told.map((i) => [`${i.vertices.join()}|${i.runs.join()}|${i.say}`, i]));
  return [...places.values()].map((i: Illegal): Fault => {
    const runs = i.runs.map((r) => sayRun(given.plan, r));
    return {
      outcome,
      ids: [...i.runs, ...i.points],
      legs: i.edges,
      words: {
        say: i.say,
        run: sayAll([...new Set(runs)]),
        points: sayAll(i.points.map((p) => sayPoint(given.plan, p))),
      },
      at: atVertex(given.network, i.vertices[0]),
      more: Math.max(0, i.vertices.length - 1),
      missing: outcome === 'cantTell' ? [i.say] : [],
    };
  });
}
