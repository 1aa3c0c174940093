import { type Figure, figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type CondensateDrain, type CondensateStep, condensateDrains } from '../../drainage/condensate-drains.ts';
import { kindOf } from '../../drainage/drains.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atEdge } from '../../places.ts';
import { sayRun, saySize } from '../../say-names.ts';
import { bareVoid, outward, room } from './houses.ts';

type Params = { readonly inside: Figure; readonly outside: Figure };
type Bad = { readonly step: CondensateStep; readonly say: string; readonly missing: string };

/** Ends that are outside by their nature: with no rooms drawn the pipe to them is not all inside. */
const OUTSIDE_ENDS = new Set(['gully', 'rainwater-pipe', 'soakaway', 'outside-end']);
const RANK: Readonly<Record<string, number>> = { outside: 0, fault: 1, maybe: 2, cantTell: 3 };

function judgeStep(step: CondensateStep, inside: number, outside: number, toOutside: boolean): Bad | null {
  const { boreMm } = step;
  if (boreMm === null) return { step, say: 'cantTell', missing: 'its bore' };
  if (boreMm < inside) return { step, say: 'fault', missing: '' };
  if (boreMm >= outside || step.cold === 'no') {
    return step.parts === null && boreMm < outside && toOutside
      ? { step, say: 'cantTell', missing: 'walls, so that it is known where it goes outside' }
      : null;
  }
  return { step, say: step.cold === 'yes' ? 'outside' : 'maybe', missing: '' };
}

function judgeDrain(given: Given, drain: CondensateDrain, params: Params): Fault[] {
  if (drain.pumped) return [];
  const scope = drain.source?.point ?? null;
  const inside = limitFor(given.plan, 'condensate-bore-inside', scope, params.inside);
  const outside = limitFor(given.plan, 'condensate-bore-outside', scope, params.outside);
  if (!inside || !outside) return [];
  const toOutside = OUTSIDE_ENDS.has(kindOf(given, drain.end) ?? '');
  const byRun = new Map<string, Bad[]>();
  for (const step of drain.steps) {
    if (step.edge.state !== 'new' || step.edge.kind !== 'leg') continue;
    const bad = judgeStep(step, inside.figure.lo, outside.figure.lo, toOutside);
    if (bad) byRun.set(step.edge.run, [...(byRun.get(step.edge.run) ?? []), bad]);
  }
  return [...byRun].flatMap(([run, all]): Fault[] => {
    const rank = (b: Bad): number => RANK[b.say] ?? 9;
    const [worst] = [...all].sort((p, q) => rank(p) - rank(q));
    if (!worst) return [];
    const { step, say } = worst;
    return [
      {
        outcome: say === 'cantTell' ? 'cantTell' : say === 'maybe' ? 'check' : 'stop',
        say,
        ids: [run],
        legs: all.filter((b) => b.say === say).map((b) => b.step.edge.id),
        words: { run: sayRun(given.plan, run), size: saySize(step.edge.tube) },
        found: step.boreMm === null ? null : exact(step.boreMm, 'mm', 1, 'memory'),
        wanted: say === 'fault' ? inside.figure : outside.figure,
        limit: { id: say === 'fault' ? 'condensate-bore-inside' : 'condensate-bore-outside', scope },
        wantedIs: 'atLeast',
        at: atEdge(given.network, step.edge.id),
        missing: worst.missing === '' ? [] : [worst.missing],
        // The limit was read; the bore of a pipe that is well on one side of it decides nothing by its tenths.
        unverified: false,
      },
    ];
  });
}

const narrow = () =>
  room().run(
    'k',
    'condensate',
    [
      [-2000, -1500, 900],
      [-1000, -1500, 840],
    ],
    { kind: 'copper', size: '15x0.7' },
  ).plan;

export default defineRule<Params>({
  id: 'condensate/bore',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [{ source: 'bs-6798-quoted', clause: '6.3.7.1.3, 6.3.7.1.4, A.2.1', table: 'condensate-bore' }],
  needs: ['size of the pipe', 'what is inside and what is outside'],
  params: () => ({
    inside: figure('condensate-bore', 'inside', 'boreMm'),
    outside: figure('condensate-bore', 'outside', 'boreMm'),
  }),
  judge: (given, params) => condensateDrains(given).flatMap((d) => judgeDrain(given, d, params)),
  say: {
    fault: {
      title: '{run}: {size} is too narrow',
      why: 'In a narrow pipe condensate hangs as a plug, and the boiler stops.',
      todo: 'Use the size sold for condensate, or what the boiler asks for.',
    },
    outside: {
      title: '{run}: {size} goes outside or into the cold',
      why: 'A thin trickle freezes in a narrow pipe, and the boiler stops in the coldest week.',
      todo: 'Change to 32 before the pipe passes through the wall, and keep it so to the drain.',
    },
    maybe: {
      title: '{run}: {size} may lie in the cold',
      why: 'It runs under the lowest floor. Where air blows through there, the pipe counts as outside.',
      todo: 'Look whether the space is ventilated, and set it on the void; 32 is right either way.',
    },
    cantTell: {
      title: "Can't tell whether {run} is wide enough",
      why: 'Not known: {missing}.',
      todo: 'Put in what is missing; outside it has to be 32.',
    },
    pass: 'It is wide enough where it runs.',
  },
  examples: [
    { name: '32 all the way out', given: () => outward(), expect: 'pass' },
    { name: 'enlarged inside, before the wall', given: () => outward({ enlargedAt: -200 }), expect: 'pass' },
    {
      name: 'enlarged outside',
      given: () => outward({ enlargedAt: 200 }),
      expect: 'stop',
      found: { lo: 19.1, hi: 19.1, tolerance: 0.01 },
      from: 'bore of 21.5 pipe in the table of waste pipe',
    },
    { name: 'enlarged in the wall', given: () => outward({ enlargedAt: 0 }), expect: 'stop' },
    { name: 'thin pipe indoors', given: narrow, expect: 'stop' },
    {
      name: 'in an unheated room',
      given: () =>
        room(false).run(
          'k',
          'condensate',
          [
            [-2000, -1500, 900],
            [-1000, -1500, 840],
          ],
          { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' },
        ).plan,
      expect: 'stop',
    },
    { name: 'under a floor nobody looked below', given: () => underFloor(null), expect: 'check' },
    { name: 'under a floor that is closed', given: () => underFloor(false), expect: 'pass' },
    {
      name: 'to a gully, no wall drawn',
      given: () => outward({ drawnRooms: false, size: '21.5' }),
      expect: 'cantTell',
    },
  ],
});

function underFloor(ventilated: boolean | null) {
  const e = room();
  e.plan.voids.v = bareVoid('v', { kind: 'floor', ventilated });
  return e.run(
    'k',
    'condensate',
    [
      [-2000, -1500, -40],
      [-1000, -1500, -100],
    ],
    { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' },
  ).plan;
}
