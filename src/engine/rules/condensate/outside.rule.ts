import { type Figure, figure } from '../../../reference/figure.ts';
import { againstMost, between } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type CondensateDrain, condensateDrains } from '../../drainage/condensate-drains.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid, outward, room } from './houses.ts';

type Params = { readonly most: Figure };

function judgeDrain(given: Given, drain: CondensateDrain, { most }: Params): Fault[] {
  if (drain.pumped || !drain.coldM || !drain.steps.some((s) => s.edge.state === 'new')) return [];
  const limit = limitFor(given.plan, 'condensate-outside-length', drain.source?.point ?? null, most);
  if (!limit) return [];
  const found = between(drain.coldM.lo, drain.coldM.hi, 'm', 1);
  const verdict = againstMost(found, limit.figure.lo);
  if (verdict === 'pass') return [];
  const cold = drain.steps.filter((s) => s.cold !== 'no');
  const run = cold[0]?.edge.run ?? drain.runs[0] ?? '';
  const known = verdict === 'stop';
  return [
    {
      // A guide's figure, not a requirement: it asks to look, it does not forbid.
      outcome: known ? 'check' : 'cantTell',
      ids: [run],
      legs: cold.map((s) => s.edge.id),
      words: { run: sayRun(given.plan, run), metres: drain.coldM.lo.toFixed(1), most: limit.figure.lo.toFixed(0) },
      found,
      wanted: limit.figure,
      limit: { id: 'condensate-outside-length', scope: drain.source?.point ?? null },
      at: atEdge(given.network, cold[0]?.edge.id),
      missing: known ? [] : ['whether the space under the lowest floor is ventilated'],
    },
  ];
}

function underFloor() {
  const e = room();
  e.plan.voids.v = bareVoid('v', {
    kind: 'floor',
    outline: [
      { x: -2950, y: -2950 },
      { x: -50, y: -2950 },
      { x: -50, y: -50 },
      { x: -2950, y: -50 },
    ],
  });
  return e.run(
    'k',
    'condensate',
    [
      [-2900, -1000, -20],
      [-500, -1000, -150],
      [-500, -2000, -210],
    ],
    { kind: 'waste', size: '32', joining: 'solvent' },
  ).plan;
}

export default defineRule<Params>({
  id: 'condensate/outside',
  topic: 'drains',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'condensate-guide-2018', clause: 'greatest length outside', table: 'condensate-limits' }],
  needs: ['what is inside and what is outside'],
  params: () => ({ most: figure('condensate-limits', 'outside length', 'm') }),
  judge: (given, params) => condensateDrains(given).flatMap((d) => judgeDrain(given, d, params)),
  say: {
    fault: {
      title: '{run}: {metres} m outside or in the cold',
      why: 'The guide stops at {most} m: a long cold pipe freezes however it is lagged.',
      todo: 'Find an end indoors, a nearer drain, or a way that stays inside longer.',
    },
    cantTell: {
      title: "Can't tell how much of {run} lies in the cold",
      why: 'Not known: {missing}. With it the pipe would be longer in the cold than the {most} m of the guide.',
      todo: 'Look on site, and set it on the void.',
    },
    pass: 'Little or nothing of it is outside.',
  },
  examples: [
    { name: 'a metre outside', given: () => outward(), expect: 'pass' },
    {
      name: 'five metres to the gully',
      given: () => outward({ outM: 5 }),
      expect: 'check',
      found: { lo: 5.57, hi: 5.57, tolerance: 0.02 },
      from: '4.97 m along the slope from the face of the wall, and 0.6 m down to the gully',
    },
    { name: 'under a floor nobody looked below', given: underFloor, expect: 'cantTell' },
  ],
});
