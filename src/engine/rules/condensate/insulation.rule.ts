import { groundAt } from '../../../geometry/ground.ts';
import { constant, type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type CondensateStep, condensateDrains } from '../../drainage/condensate-drains.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid, outward, room } from './houses.ts';

type Params = { readonly least: Figure; readonly better: Figure };

/** Farther than this from where it was levelled, the ground may be anything. */
const NEAR_MM = constant('drain-judgement', 'ground levelled within', 'mm');
/** Parts outside shorter than this are the way through the wall itself. */
const PAST_WALL_MM = constant('drain-judgement', 'outside by less', 'mm');

/** Below the levelled ground at both ends: the ground keeps the frost off. */
function buried(given: Given, { a, b }: CondensateStep): boolean {
  return [a, b].every((p) => {
    const ground = p ? groundAt(given.plan, p.at) : undefined;
    return p !== null && ground !== undefined && ground.awayMm <= NEAR_MM && p.at.z < ground.z;
  });
}

function judge(given: Given, { least, better }: Params): Fault[] {
  if (least.is !== 'known') return [];
  return condensateDrains(given).flatMap((drain): Fault[] => {
    const byRun = new Map<string, { legs: string[]; thinnest: number; sure: boolean }>();
    for (const step of drain.steps) {
      const { edge, parts } = step;
      if (buried(given, step)) continue;
      const long = (parts ?? []).filter((p) => p.toMm - p.fromMm > PAST_WALL_MM);
      const sure = long.some((p) => p.round === 'outside' || p.round === 'cold');
      const has = edge.insulation?.thicknessMm ?? 0;
      const out = sure || long.some((p) => p.round === 'maybeCold');
      if (edge.state !== 'new' || !out || has >= least.lo) continue;
      const now = byRun.get(edge.run) ?? { legs: [], thinnest: has, sure };
      byRun.set(edge.run, {
        legs: [...now.legs, edge.id],
        thinnest: Math.min(now.thinnest, has),
        sure: now.sure || sure,
      });
    }
    return [...byRun].map(([run, { legs, thinnest, sure }]) => ({
      outcome: sure ? 'check' : 'cantTell',
      missing: sure ? [] : ['whether the space under the lowest floor is ventilated'],
      ids: [run],
      legs,
      words: {
        run: sayRun(given.plan, run),
        least: least.lo.toFixed(0),
        better: better.is === 'known' ? better.lo.toFixed(0) : least.lo.toFixed(0),
      },
      found: exact(thinnest, 'mm', 0),
      wanted: least,
      wantedIs: 'atLeast',
      at: atEdge(given.network, legs[0]),
      more: legs.length - 1,
    }));
  });
}

function underGround() {
  const e = room();
  e.plan.grounds.g = { id: 'g', line: [{ x: 500, y: -1500, z: 0 }], kind: 'lawn', sureness: 'seen' };
  return e.run(
    'k',
    'condensate',
    [
      [300, -1500, -300],
      [1500, -1500, -370],
    ],
    { kind: 'waste', size: '32', joining: 'solvent' },
  ).plan;
}

function underFloor() {
  const e = room();
  e.plan.voids.v = bareVoid('v', { kind: 'floor' });
  return e.run(
    'k',
    'condensate',
    [
      [-2000, -1500, -40],
      [-1000, -1500, -100],
    ],
    { kind: 'waste', size: '32', joining: 'solvent' },
  ).plan;
}

export default defineRule<Params>({
  id: 'condensate/insulation',
  topic: 'drains',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'condensate-guide-2018', clause: 'outside pipes', table: 'condensate-limits' }],
  needs: ['what is inside and what is outside'],
  params: () => ({
    least: figure('condensate-limits', 'outside insulation', 'mm'),
    better: figure('condensate-limits', 'outside insulation, better', 'mm'),
  }),
  judge,
  say: {
    fault: {
      title: '{run} is outside with too little lagging',
      why: 'Bare or thinly lagged it freezes in the first hard frost.',
      todo: 'Waterproof lagging that stands the sun, {least} mm at least, {better} better, up to the very end of the pipe.',
    },
    cantTell: {
      title: "Can't tell whether {run} needs lagging",
      why: 'It runs under the lowest floor. Where air blows through there the pipe needs lagging as it does outside.',
      todo: 'Look whether the space is ventilated, and set it on the void.',
    },
    pass: 'Nothing of it is outside, or it is lagged.',
  },
  examples: [
    { name: 'lagged outside', given: () => outward({ insulationMm: 19 }), expect: 'pass' },
    { name: 'in the ground', given: underGround, expect: 'pass' },
    {
      name: 'bare outside',
      given: () => outward(),
      expect: 'check',
      found: { lo: 0, hi: 0, tolerance: 0 },
      from: 'no lagging drawn',
    },
    { name: 'under a floor nobody looked below', given: underFloor, expect: 'cantTell' },
    { name: 'thinly lagged outside', given: () => outward({ insulationMm: 9 }), expect: 'check' },
  ],
});
