import type { Point } from '../../../plan/records/pipework.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atPoint } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { primaries } from './circuit-houses.ts';

/** Where tails are only marked, another rule tells which are left. */
const TOLD_ELSEWHERE = 'old-tails';

/** Vertices of a point on one circuit, and the pipes at them. */
function pipesAt(given: Given, point: Point, circuit: string) {
  const tails = point.connections.filter((c) => given.network.kinds.circuit(c.service) === circuit);
  const edges = tails.flatMap((c) => given.network.vertices.get(`${point.id}/${c.id}`)?.edges ?? []);
  return { tails, edges };
}

function judge(given: Given): Fault[] {
  const { plan, network } = given;
  if (given.case.when === 'before') return [];
  const halves = Object.values(plan.points).flatMap((point) => {
    if (point.kind === TOLD_ELSEWHERE || !network.alive.has('points', point.id)) return [];
    const [flow, back] = [pipesAt(given, point, 'heatingFlow'), pipesAt(given, point, 'heatingReturn')];
    const fresh = (of: readonly string[]): boolean => of.some((e) => network.edges.get(e)?.state === 'new');
    if (flow.tails.length === 0 || back.tails.length === 0) return [];
    if (fresh(flow.edges) && back.edges.length === 0) return [{ point, lacks: 'return' }];
    if (fresh(back.edges) && flow.edges.length === 0) return [{ point, lacks: 'flow' }];
    return [];
  });
  const [first] = halves;
  if (!first) return [];
  return [
    {
      outcome: 'check',
      ids: halves.map((h) => h.point.id),
      words: {
        point: midSentence(sayPoint(plan, first.point.id)),
        has: first.lacks === 'return' ? 'flow' : 'return',
        lacks: first.lacks,
      },
      at: atPoint(plan, first.point.id),
      more: halves.length - 1,
    },
  ];
}

const SENTENCES = {
  title: 'The {point} has a heating {has} and no {lacks}',
  why: 'Water that cannot come back does not flow; its metres, pieces and loss are also missing from what is counted.',
  todo: 'Draw the other pipe, or mark it as an unseen stretch where it is there already.',
};

export default defineRule({
  id: 'heating/no-return',
  topic: 'heating',
  since: '2',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'pipework' }],
  needs: ['flow and return as drawn'],
  params: () => ({}),
  judge,
  say: { fault: SENTENCES, cantTell: SENTENCES, pass: 'What has a flow has a return.' },
  examples: [
    { name: 'flow and return', given: () => primaries({}), expect: 'pass' },
    { name: 'a flow alone', given: () => primaries({ withReturn: false }), expect: 'check' },
    {
      name: 'a boiler nobody piped yet',
      given: () => {
        const plan = primaries({ withReturn: false });
        return { ...plan, runs: {}, legs: {}, nodes: {} };
      },
      expect: 'pass',
    },
  ],
});
