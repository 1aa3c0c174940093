import type { Figure } from '../../../reference/figure.ts';
import { againstLeast, exact, type Quantity } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { type CondensateDrain, type CondensateStep, condensateDrains } from '../../drainage/condensate-drains.ts';
import { condensateFalls } from '../../drainage/falls-wanted.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atEdge } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { bareVoid } from './houses.ts';

type Bad = {
  readonly step: CondensateStep;
  readonly found: Quantity | null;
  readonly say: string;
  readonly rank: number;
};
type Params = { readonly wanted: Figure; readonly least: Figure };

const RISES = exact(0, 'mm/m', 1);

/** What is wrong with one piece, worst first by rank; nothing where it falls as much as is wanted. */
function judgeStep(step: CondensateStep, wanted: Quantity, leastMmPerM: number): Bad | null {
  const { lie } = step;
  if (lie.is === 'upright' || lie.is === 'short') return null;
  if (lie.is === 'unknown') return step.edge.kind === 'leg' ? { step, found: null, say: 'cantTell', rank: 3 } : null;
  if (lie.is === 'up') return { step, found: RISES, say: 'climbs', rank: 0 };
  const found = lie.mmPerM;
  if (found.hi !== null && found.hi <= 0) return { step, found, say: found.hi < 0 ? 'climbs' : 'level', rank: 0 };
  if (againstLeast(found, leastMmPerM) === 'stop') return { step, found, say: 'fault', rank: 1 };
  if (againstLeast(found, wanted.lo) === 'pass') return null;
  return { step, found, say: found.lo < leastMmPerM ? 'unsure' : 'between', rank: 2 };
}

const OUTCOME = ['stop', 'stop', 'check', 'cantTell'] as const;

function judgeDrain(given: Given, drain: CondensateDrain, { wanted: general, least }: Params): Fault[] {
  if (drain.pumped) return [];
  const limit = limitFor(given.plan, 'condensate-fall', drain.source?.point ?? null, general);
  const byRun = new Map<string, Bad[]>();
  for (const step of drain.steps) {
    if (step.edge.state !== 'new') continue;
    const bad = limit
      ? judgeStep(step, limit.figure, limit.overridden || least.is !== 'known' ? limit.figure.lo : least.lo)
      : { step, found: null, say: 'cantTell', rank: 3 };
    if (bad) byRun.set(step.edge.run, [...(byRun.get(step.edge.run) ?? []), bad]);
  }
  return [...byRun].flatMap(([run, all]): Fault[] => {
    const [worst] = [...all].sort((p, q) => p.rank - q.rank || (p.found?.lo ?? 0) - (q.found?.lo ?? 0));
    if (!worst) return [];
    const known = worst.say !== 'cantTell';
    return [
      {
        outcome: OUTCOME[worst.rank] ?? 'cantTell',
        say: worst.say,
        ids: [run],
        legs: all.map((b) => b.step.edge.id),
        words: {
          run: sayRun(given.plan, run),
          least: least.is === 'known' ? least.lo.toFixed(1) : '',
          wanted: limit ? limit.figure.lo.toFixed(1) : '',
          metres: ((worst.step.flatMm ?? 0) / 1000).toFixed(2),
          drop: Math.round(worst.step.drop?.mm ?? 0).toString(),
        },
        found: worst.found,
        wanted: known && limit ? limit.figure : null,
        limit: { id: 'condensate-fall', scope: drain.source?.point ?? null },
        wantedIs: 'atLeast',
        at: atEdge(given.network, worst.step.edge.id),
        more: all.length - 1,
        missing: known ? [] : [limit ? 'the height of its ends' : 'the fall its edition wants'],
      },
    ];
  });
}

const house = (drop: number, metres = 1, assumed = 0) => {
  const e = example()
    .point('standpipe', 's', [0, 0, 0])
    .run(
      'k',
      'condensate',
      [
        [0, 30 + metres * 1000, 1400],
        [0, 30 + metres * 1000, 1000 + drop],
        [0, 30, 1000],
        { point: 's', connection: 'in' },
      ],
      { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' },
    );
  const node = e.plan.nodes[e.nodesOf('k')[1] ?? ''];
  if (assumed > 0 && node?.place.on === 'storey')
    node.place.height = {
      from: 'datum',
      of: null,
      mm: 1000 + drop,
      assumed: { lo: 1000 + drop - assumed, hi: 1000 + drop + assumed },
    };
  return e.plan;
};

function noHeight() {
  const plan = house(60);
  plan.voids.v = bareVoid('v');
  const node = Object.values(plan.nodes)[1];
  if (node?.place.on === 'storey') node.place.height = { from: 'voidTop', of: 'v', mm: 0 };
  return plan;
}

export default defineRule<Params>({
  id: 'condensate/fall',
  topic: 'drains',
  since: '1',
  basis: 'requirement',
  lifeSafety: false,
  cites: [
    { source: 'condensate-guide-2018', clause: 'fall of the pipe', table: 'condensate-fall-newer' },
    { source: 'condensate-older-instructions', clause: 'fall of the pipe', table: 'condensate-fall-older' },
  ],
  needs: ['heights of the pipe'],
  params: (given) => {
    const { wanted, least } = condensateFalls(given.plan.basis.editions);
    return { wanted, least };
  },
  judge: (given, params) => condensateDrains(given).flatMap((d) => judgeDrain(given, d, params)),
  say: {
    fault: {
      title: '{run} falls too little',
      why: 'It drops {drop} mm in {metres} m. Older guides want {least} mm in a metre, newer ones more: water stands in it, freezes outside, and stops the boiler.',
      todo: 'Start higher, end lower, or find a nearer drain.',
    },
    between: {
      title: '{run} falls less than newer guides want',
      why: 'It drops {drop} mm in {metres} m: enough for the {least} mm in a metre of older guides, short of {wanted}.',
      todo: "Give it more where there is room; the boiler's own instructions say which goes.",
    },
    unsure: {
      title: '{run} may fall too little',
      why: 'A height on it is assumed, and within what is assumed it falls less than the {least} mm in a metre that older guides want.',
      todo: 'Measure the heights of its ends.',
    },
    level: {
      title: '{run} lies level for {metres} m',
      why: 'Water stands in a level pipe, and dirt settles in it until the boiler stops.',
      todo: 'Let it fall all the way, {wanted} mm in a metre or more.',
    },
    climbs: {
      title: '{run} climbs on its way to the drain',
      why: 'Condensate runs by its own weight: it backs up before the rise, into the boiler.',
      todo: 'Take a way that falls all along, or a pump where there is none.',
    },
    cantTell: {
      title: "Can't tell whether {run} falls",
      why: 'Not known: {missing}.',
      todo: 'Measure it, or pick the edition that goes.',
    },
    pass: 'It falls all the way.',
  },
  examples: [
    { name: 'falls by newer guides', given: () => house(60), expect: 'pass' },
    {
      name: 'enough for older guides only',
      given: () => house(51, 1.12),
      expect: 'check',
      found: { lo: 45.5, hi: 45.5, tolerance: 0.1 },
      from: '51 mm in 1.12 m is 45.5 mm in a metre, on paper',
    },
    {
      name: 'too little for any',
      given: () => house(30),
      expect: 'stop',
      found: { lo: 30, hi: 30, tolerance: 0.01 },
      from: '30 mm in a metre as drawn',
    },
    { name: 'an assumed height decides', given: () => house(50, 1, 15), expect: 'check' },
    { name: 'level', given: () => house(0), expect: 'stop' },
    { name: 'climbs', given: () => house(-40), expect: 'stop' },
    { name: 'an end without a height', given: noHeight, expect: 'cantTell' },
    {
      name: 'pushed by a pump',
      given: () =>
        example()
          .point('condensate-pump', 'p', [0, 0, 900], { liftM: 4, overflowStops: true })
          .point('standpipe', 's', [3000, 0, 0])
          .run(
            'k',
            'condensate',
            [
              { point: 'p', connection: 'out' },
              [62.5, 65, 2600],
              [3000, 65, 2600],
              [3000, 30, 2600],
              { point: 's', connection: 'in' },
            ],
            { kind: 'plastic', size: '10', joining: 'pushFit' },
          ).plan,
      expect: 'pass',
    },
  ],
});
