import type { Illegal, IllegalKind } from '../../../network/trace.ts';
import type { Example, Fault, Sentences } from '../../define-rule.ts';
import { example } from '../../example.ts';
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

/** What the rules of this topic say where something has no place or no part. */
export const CANT_TELL: Sentences = {
  title: "Can't tell what flows here",
  why: '{say}',
  todo: 'Draw what is there, or mark it as an unseen stretch.',
};

/** A network nobody can find fault with: each rule of this topic has to be silent on it. */
export const ONE_WAY: Example = {
  name: 'one way from the meter to the boiler',
  given: () =>
    example()
      .point('gas-meter', 'm', [0, 0, 500])
      .point('boiler', 'b', [3000, 0, 1300])
      .run('g', 'gas', [
        { point: 'm', connection: 'outlet' },
        [75, -115, 2300],
        [75, -81, 2300],
        [3000, -81, 2300],
        [3000, -300, 2300],
        [3000, -300, 900],
        [3000, -81, 900],
        { point: 'b', connection: 'gas' },
      ]).plan,
  expect: 'pass',
};
