import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayAll, sayPoint } from '../../say-names.ts';

const JOINED_HERE = 'old-tails';

function judge(given: Given): Fault[] {
  if (given.case.when === 'before') return [];
  return Object.values(given.plan.points).flatMap((point): Fault[] => {
    if (point.kind !== JOINED_HERE || !given.network.alive.has('points', point.id)) return [];
    const used = (connection: string): boolean =>
      (given.network.vertices.get(`${point.id}/${connection}`)?.edges.length ?? 0) > 0;
    const free = point.connections.filter((c) => !used(c.id));
    // Nothing is joined here at all: it is only marked, and the drawing has not come so far.
    if (free.length === 0 || free.length === point.connections.length) return [];
    const first = point.connections.find((c) => used(c.id));
    return [
      {
        outcome: 'note',
        ids: [point.id],
        words: {
          tails: sayAll(free.map((c) => midSentence(c.label))),
          tail: free.length === 1 ? 'tail' : 'tails',
          has: free.length === 1 ? 'has' : 'have',
          point: midSentence(sayPoint(given.plan, point.id)),
        },
        at: atVertex(given.network, first && `${point.id}/${first.id}`),
        more: free.length - 1,
      },
    ];
  });
}

const house = (...joined: string[]) => {
  const e = example().point('old-tails', 'ot', [0, 0, 150], {}, null);
  joined.forEach((service, i) => {
    const tail = { heatingFlow: 'flow', heatingReturn: 'return', hot: 'hot', cold: 'cold' }[service] ?? service;
    e.run(service, service, [{ point: 'ot', connection: tail }, [i * 300, -500, 600]]);
  });
  return e.plan;
};

export default defineRule({
  id: 'network/tail-unused',
  topic: 'pipework',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['what is joined at the old tails'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'The {tails} {tail} at the {point} {has} no run',
      why: 'An old branch that is left open leaks, and one that is capped with water in it goes stale.',
      todo: 'Join it, or cut it back to the tee and cap it there.',
    },
    cantTell: { title: "Can't tell what is joined at the {point}", why: 'Nothing is drawn.', todo: 'Draw it.' },
    pass: 'Every old tail is joined.',
  },
  examples: [
    { name: 'three of four joined', given: () => house('heatingFlow', 'heatingReturn', 'cold'), expect: 'note' },
    { name: 'all joined', given: () => house('heatingFlow', 'heatingReturn', 'cold', 'hot'), expect: 'pass' },
    { name: 'none joined yet', given: () => house(), expect: 'pass' },
  ],
});
