import { defineRule, type Fault } from '../../define-rule.ts';
import { type ExamplePlan, example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { sayRun } from '../../say-names.ts';

/** Runs with legs that lean on a height nobody told: every rule that asks where they are has to leave them out. */
function judge(given: Given): Fault[] {
  const { network } = given;
  const placed = (vertex: string): boolean => Boolean(network.vertices.get(vertex)?.place);
  return [...network.edgesOfRun].flatMap(([run, ids]): Fault[] => {
    const edges = ids.flatMap((id) => network.edges.get(id) ?? []);
    const lost = edges.filter((e) => e.kind === 'leg' && !(placed(e.a) && placed(e.b)));
    if (lost.length === 0) return [];
    const ends = new Set(lost.flatMap((e) => [e.a, e.b]).filter((v) => !placed(v)));
    const beside = lost.flatMap((e) => [e.a, e.b]).find(placed);
    return [
      {
        outcome: 'cantTell',
        ids: [run],
        legs: lost.map((e) => e.id),
        words: {
          run: sayRun(given.plan, run),
          corners: ends.size === 1 ? 'One place of it has' : `${ends.size} places of it have`,
        },
        missing: ['the height of each corner'],
        at: atVertex(network, beside),
      },
    ];
  });
}

const house = (read: boolean): ExamplePlan['plan'] => {
  const e = example().run('c', 'cold', [
    [0, 0, 300],
    [1000, 0, 300],
    [1000, 1000, 300],
  ]);
  const end = e.plan.nodes[e.nodesOf('c')[2] ?? ''];
  if (!read && end?.place.on === 'storey') end.place.height = { from: 'connection', of: null, mm: 0 };
  return e.plan;
};

const LOST = {
  title: "Can't tell where {run} goes",
  why: '{corners} no height, so nothing is told of its length, of what it meets and of what it crosses.',
  todo: 'Measure the height, or set what it is measured from.',
};

export default defineRule({
  id: 'network/no-height',
  topic: 'pipework',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['the height of each corner'],
  params: () => ({}),
  judge,
  say: { fault: LOST, cantTell: LOST, pass: 'Every corner has its height.' },
  examples: [
    { name: 'every corner measured', given: () => house(true), expect: 'pass' },
    { name: 'an end nobody measured', given: () => house(false), expect: 'cantTell' },
  ],
});
