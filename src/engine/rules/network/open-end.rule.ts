import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

/** Where a discharge or a drain comes out it is meant to be open; those ends have rules of their own. */
const OPEN_BY_NATURE = new Set(['discharge', 'boilerRelief', 'condensate']);

function openEnds(given: Given): Fault[] {
  return given.traces.flatMap((trace) =>
    trace.deadEnds
      .filter((d) => d.why === 'open')
      .flatMap(({ vertex }): Fault[] => {
        const edge = given.network.edges.get(given.network.vertices.get(vertex)?.edges[0] ?? '');
        if (!edge || OPEN_BY_NATURE.has(edge.service) || edge.state === 'there') return [];
        const gas = edge.service === 'gas';
        return [
          {
            outcome: gas ? 'check' : 'note',
            ids: [edge.run],
            legs: [edge.id],
            words: { run: sayRun(given.plan, edge.run) },
            at: atVertex(given.network, vertex),
            say: gas ? 'gas' : 'fault',
          },
        ];
      }),
  );
}

export default defineRule({
  id: 'network/open-end',
  topic: 'pipework',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['where the run ends'],
  params: () => ({}),
  judge: openEnds,
  say: {
    fault: {
      title: '{run} ends nowhere yet',
      why: 'Nothing is fed by an open end, so it is in the lengths and in the list and in no sum.',
      todo: 'Draw it on to a tail, tee it in, or put a stop end on it.',
    },
    gas: {
      title: '{run} ends open',
      why: 'Gas pipe that ends nowhere must be capped before gas is let in.',
      todo: 'Draw it on to its appliance, or put a stop end on it.',
    },
    cantTell: { title: "Can't tell where {run} ends", why: 'Its end has no place.', todo: 'Set its height.' },
    pass: 'Every run ends at something.',
  },
  examples: [
    {
      name: 'an unfinished cold run',
      given: () =>
        example().run('c', 'cold', [
          [0, 0, 300],
          [1000, 0, 300],
        ]).plan,
      expect: 'note',
    },
    {
      name: 'an unfinished gas run',
      given: () =>
        example().run('g', 'gas', [
          [0, 0, 300],
          [1000, 0, 300],
        ]).plan,
      expect: 'check',
    },
    {
      name: 'a relief pipe to the open',
      given: () =>
        example().run(
          'p',
          'boilerRelief',
          [
            [0, 0, 300],
            [0, 0, 100],
          ],
          { size: '15x0.7' },
        ).plan,
      expect: 'pass',
    },
  ],
});
