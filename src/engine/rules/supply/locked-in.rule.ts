import type { Quantity } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { usualGrowth } from '../../supply/expansion.ts';
import { inletsOf, isNewWay, pointsOn, wayTo } from '../../supply/way-back.ts';
import { combiHouse } from './houses.ts';

const CHECKS = new Set(['check-valve', 'double-check']);

function judgeBoiler(
  given: Given,
  id: string,
  growth: { fromC: number; toC: number; percent: Quantity | null },
): Fault[] {
  const point = given.plan.points[id];
  const inlet = point && inletsOf(given, point).at(-1);
  if (!point || inlet === undefined || growth.percent === null) return [];
  const way = wayTo(given, point, inlet);
  // A vessel ahead of it has its own room for expansion.
  if (pointsOn(way).some((p) => p.kind !== 'stop-tap' && p.fields.unvented === true)) return [];
  const check = way.steps.find((s) => s.is === 'item' && CHECKS.has(s.item.kind) && s.item.fields.roomAfter !== true);
  if (check?.is !== 'item' || !(point.option !== null || isNewWay(given, way))) return [];
  const node = given.network.vertexOf.get(check.item.node);
  return [
    {
      outcome: 'note',
      ids: [id],
      words: {
        boiler: midSentence(sayPoint(given.plan, id)),
        from: `${growth.fromC}`,
        to: `${growth.toC}`,
        percent: growth.percent.lo.toFixed(2),
      },
      at: atVertex(given.network, node),
    },
  ];
}

export default defineRule({
  id: 'supply/locked-in',
  topic: 'water',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [
    { source: 'trade-practice', clause: 'check valve ahead of a combination boiler', table: 'unvented-inlet' },
    { source: 'own-sums', clause: 'growth from the densities of water' },
  ],
  needs: ['the cold to the boiler'],
  params: () => ({}),
  judge: (given) => {
    const growth = usualGrowth();
    return Object.values(given.plan.points)
      .filter((p) => p.kind === 'boiler' && given.network.alive.has('points', p.id))
      .flatMap((p) => judgeBoiler(given, p.id, growth));
  },
  say: {
    fault: {
      title: 'A check valve locks the cold to the {boiler} in',
      why: 'Water grows by {percent} percent from {from} to {to} °C. With taps shut and the way back barred the pressure climbs until a valve weeps or a hose gives.',
      todo: 'Set a small expansion vessel after the check valve, or see that its sheet has one inside; then tell it on the check valve.',
    },
    cantTell: {
      title: "Can't tell whether the cold to the {boiler} is locked in",
      why: 'Not known: {missing}.',
      todo: 'Look for a check valve, also in the water meter.',
    },
    pass: 'What the water grows by can go back to the main, or has room.',
  },
  examples: [
    { name: 'nothing bars the way back', given: () => combiHouse(), expect: 'pass' },
    { name: 'a check valve ahead of a combi', given: () => combiHouse({ check: {} }), expect: 'note' },
    {
      name: 'the same with a small vessel after it',
      given: () => combiHouse({ check: { roomAfter: true } }),
      expect: 'pass',
    },
  ],
});
