import type { Connection, Point } from '../../../plan/records/pipework.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { isTap } from '../../water/draw-offs.ts';

const HOT: ReadonlySet<string> = new Set(['hot', 'preheated']);
const COLD: ReadonlySet<string> = new Set(['cold', 'balancedCold']);

interface Side {
  readonly at: Connection['at'];
  readonly id: string;
  readonly isNew: boolean;
}

/** A connection of the tap with the pipe that is on it. */
function sideOf(given: Given, point: Point, services: ReadonlySet<string>): Side | undefined {
  const c = point.connections.find((one) => services.has(one.service));
  if (!c) return undefined;
  const edges = given.network.vertices.get(`${point.id}/${c.id}`)?.edges ?? [];
  return { at: c.at, id: c.id, isNew: given.network.edges.get(edges[0] ?? '')?.state === 'new' };
}

function judge(given: Given): Fault[] {
  return Object.values(given.plan.points).flatMap((point): Fault[] => {
    if (!isTap(point.kind) || !given.network.alive.has('points', point.id)) return [];
    const [hot, cold] = [sideOf(given, point, HOT), sideOf(given, point, COLD)];
    // Told of only where this job brings one of them; x runs to the right as one stands before it. One above the other has no left.
    if (!hot || !cold || !(hot.isNew || cold.isNew) || hot.at.x <= cold.at.x) return [];
    return [
      {
        outcome: 'check',
        ids: [point.id],
        words: { tap: midSentence(sayPoint(given.plan, point.id)) },
        at: atVertex(given.network, `${point.id}/${hot.id}`),
      },
    ];
  });
}

/** A shower with a new hot and cold pipe to it. */
function shower(hotTo: 'hot' | 'cold', swapped = false) {
  const e = example().point('shower-valve', 'shower', [2000, 0, 1100]);
  const point = e.plan.points.shower;
  if (swapped && point)
    e.plan.points.shower = {
      ...point,
      connections: point.connections.map((c) => ({ ...c, at: { ...c.at, x: -c.at.x } })),
    };
  const coldTo = hotTo === 'hot' ? 'cold' : 'hot';
  return e
    .run('h', 'hot', [[1925, 300, 500], { point: 'shower', connection: hotTo }], { size: '15x0.7' })
    .run('c', 'cold', [[2075, 300, 500], { point: 'shower', connection: coldTo }], { size: '15x0.7' }).plan;
}

export default defineRule({
  id: 'water/hot-left',
  topic: 'water',
  since: '2',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'hot water' }],
  needs: ['where hot and cold arrive'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: 'Hot arrives on the right at the {tap}',
      why: 'Hot is on the left everywhere: people scald themselves where it is not, and a thermostatic valve fed the wrong way round does not work.',
      todo: 'Swap the two before the wall is closed: there is no room to cross them inside a thin stud wall.',
    },
    cantTell: {
      title: "Can't tell which side hot arrives at the {tap}",
      why: 'Nothing is drawn to it.',
      todo: 'Draw hot and cold to it.',
    },
    pass: 'Hot is on the left.',
  },
  examples: [
    { name: 'hot on the left', given: () => shower('hot'), expect: 'pass' },
    { name: 'hot on the right by its tails', given: () => shower('hot', true), expect: 'check' },
    { name: 'hot run to the cold side, of which another rule tells', given: () => shower('cold'), expect: 'pass' },
  ],
});
