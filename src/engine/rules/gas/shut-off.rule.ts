import { otherEnd } from '../../../network/network.ts';
import { constant } from '../../../reference/figure.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence } from '../../say-names.ts';

/** Items that shut gas off at an appliance. */
const SHUTS = new Set(['gas-cock', 'isolation-valve']);
const NEAR_MM = constant('nearness', 'shut-off');

/** A shut-off at the tail, or on the last of the pipe to it before any tee. */
function hasShutOff(given: Given, vertex: string): boolean {
  const { network, plan } = given;
  let here = vertex;
  let before: string | null = null;
  let walked = 0;
  for (;;) {
    const v = network.vertices.get(here);
    if (!v) return false;
    if (v.items.some((id) => SHUTS.has(plan.items[id]?.kind ?? ''))) return true;
    const on = v.edges.filter((e) => e !== before);
    const edge = on.length === 1 ? network.edges.get(on[0] ?? '') : undefined;
    if (!edge || walked > NEAR_MM) return false;
    walked += edge.lengthMm.hi ?? Number.POSITIVE_INFINITY;
    before = edge.id;
    here = otherEnd(edge, here);
  }
}

function judge(given: Given): Fault[] {
  return given.gas.appliances.flatMap((a): Fault[] => {
    const edge = given.network.edges.get(given.network.vertices.get(a.vertex)?.edges[0] ?? '');
    if (a.path.length === 0 || edge?.state !== 'new' || hasShutOff(given, a.vertex)) return [];
    return [
      {
        outcome: 'check',
        ids: [a.point],
        legs: [edge.id],
        words: { name: midSentence(a.name) },
        at: atVertex(given.network, a.vertex),
      },
    ];
  });
}

const house = (valve: boolean) => {
  const e = example()
    .point('gas-meter', 'm', [0, 0, 500])
    .point('hob', 'h', [3000, 0, 900])
    .run(
      'g',
      'gas',
      [{ point: 'm', connection: 'outlet' }, [75, -115, 2300], [3000, -60, 2300], { point: 'h', connection: 'gas' }],
      { size: '22x0.9' },
    );
  if (valve) {
    const node = e.nodesOf('g').at(-1) ?? '';
    e.plan.items.v = {
      id: 'v',
      node,
      kind: 'gas-cock',
      name: '',
      along: null,
      fields: {},
      option: 'A',
      sureness: 'seen',
    };
  }
  return e.plan;
};

export default defineRule({
  id: 'gas/shut-off',
  topic: 'gas',
  since: '1',
  basis: 'law',
  lifeSafety: true,
  cites: [{ source: 'gas-safety-regulations-1998', clause: 'regulation 26(6)' }],
  needs: ['valves'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'No shut-off drawn at the {name}',
      why: 'Every gas appliance needs a way to shut its gas off close by, and a joint at which it comes away.',
      todo: 'Put a gas cock on the last leg, where a hand can reach it.',
    },
    cantTell: {
      title: "Can't tell whether the {name} can be shut off",
      why: 'Its pipe cannot be followed.',
      todo: 'Draw the last of the pipe.',
    },
    pass: 'There is a shut-off close by.',
  },
  examples: [
    { name: 'a hob without one', given: () => house(false), expect: 'check' },
    { name: 'a hob with one', given: () => house(true), expect: 'pass' },
  ],
});
