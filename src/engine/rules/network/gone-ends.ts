import type { Fault } from '../../define-rule.ts';
import { type ExamplePlan, example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint, sayRun } from '../../say-names.ts';

/** Live ends of pipe where a point was taken away and nobody capped it. One a run and point. */
export function goneEnds(given: Given, service: (of: string) => boolean): Fault[] {
  const { network, plan } = given;
  return given.traces.flatMap((trace) =>
    trace.deadEnds
      .filter((d) => d.why === 'gone')
      .flatMap(({ vertex }): Fault[] => {
        const here = network.vertices.get(vertex);
        const edge = network.edges.get(here?.edges[0] ?? '');
        if (!here?.gone || !edge || !service(edge.service)) return [];
        return [
          {
            outcome: 'check',
            ids: [edge.run, here.gone.point],
            legs: here.edges,
            words: { run: sayRun(plan, edge.run), point: midSentence(sayPoint(plan, here.gone.point)) },
            at: atVertex(network, vertex),
          },
        ];
      }),
  );
}

/** An old boiler that is taken out; its pipe stays to the last, or is cut back and capped. */
export function strippedBoiler(service: 'gas' | 'cold', last: 'keep' | 'cap'): ExamplePlan['plan'] {
  const { plan } = example()
    .point('boiler', 'old', [3000, 0, 1300], {}, null)
    .run('r', service, [[0, -81, 900], [3000, -81, 900], { point: 'old', connection: service }], { option: null });
  plan.options.A = { id: 'A', name: 'A', note: '', fates: { old: 'strip', 'r.2': last } };
  return plan;
}
