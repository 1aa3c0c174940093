import { type Figure, figure } from '../../../reference/figure.ts';
import { exact, sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atVertex } from '../../places.ts';
import { sayRun } from '../../say-names.ts';
import { type DeadLeg, deadLegs } from '../../water-system/dead-legs.ts';

type Params = { readonly stub: Figure };

const MM = 1000;

function toFault(given: Given, leg: DeadLeg, mostM: number): Fault[] {
  const { lo, hi } = leg.lengthM;
  const last = leg.sections[leg.sections.length - 1];
  const run = last?.runs[last.runs.length - 1];
  if (run === undefined || (hi !== null && hi <= mostM)) return [];
  const short = lo <= mostM;
  return [
    {
      outcome: short ? 'cantTell' : 'check',
      ids: [run],
      legs: leg.sections.flatMap((s) => s.legs),
      words: {
        run: sayRun(given.plan, run),
        metres: sayFigures(leg.lengthM),
        litres: leg.litres ? `, ${sayFigures({ ...leg.litres, digits: 1 })} litres` : '',
      },
      missing: short ? ['how long the pipe to its end is'] : [],
      found: leg.lengthM,
      wanted: exact(mostM, 'm', 2, 'practice'),
      at: atVertex(given.network, leg.vertex),
    },
  ];
}

/** Cold past a tee to basin taps, and on to where something was; cut off `after` mm behind the tee. */
function cutOff(afterMm: number) {
  const e = example()
    .point('stop-tap', 'stop', [0, 0, 300], {}, null)
    .point('basin-taps', 'basin', [3000, 0, 550], {}, null)
    .run('main', 'cold', [{ point: 'stop', connection: 'outlet' }, [1000, -300, 500]], { option: null });
  const tee = e.nodesOf('main')[1] ?? '';
  e.run('branch', 'cold', [tee, [1000 + afterMm, -300, 500], [6000, -300, 500]], { option: null });
  e.run('on', 'cold', [tee, [1000, -300, 900], { point: 'basin', connection: 'cold' }], { option: null });
  e.plan.options.A = { id: 'A', name: 'A', note: '', fates: { 'branch.2': 'cap' } };
  return e.plan;
}

function unseen() {
  const plan = cutOff(3000);
  const leg = plan.legs['branch.1'];
  if (!leg) throw new Error('no branch');
  delete plan.legs['branch.1'];
  plan.stretches.s = {
    id: 's',
    run: 'branch',
    a: leg.a,
    b: leg.b,
    lengthMm: { lo: 100, hi: 4000 },
    bends: { lo: 0, hi: 2 },
    tube: leg.tube,
    option: null,
  };
  return plan;
}

export default defineRule<Params>({
  id: 'water/dead-leg',
  topic: 'water',
  since: '2',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'plumbing-textbook-2019', clause: 'dead legs (page view 107)' }],
  needs: ['what becomes of the old pipe', 'how long it is'],
  params: () => ({ stub: figure('hot-lagging-limits', 'stub', 'mm') }),
  judge: (given, { stub }) =>
    stub.is === 'known' ? deadLegs(given).flatMap((leg) => toFault(given, leg, stub.lo / MM)) : [],
  say: {
    fault: {
      title: '{run} ends dead after {metres} m',
      why: 'Water stands in it{litres}: what stands goes stale, and a branch left behind where something was is a risk to health.',
      todo: 'Cut it back to the tee and cap it there.',
    },
    cantTell: {
      title: "Can't tell how much water stands in {run}",
      why: 'Not known: {missing}. It feeds nothing any more.',
      todo: 'Find the tee it comes from, and cut it back to there.',
    },
    pass: 'No water stands in a pipe that feeds nothing.',
  },
  examples: [
    {
      name: 'capped three metres behind its tee',
      given: () => cutOff(3000),
      expect: 'check',
      found: { lo: 3, hi: 3, tolerance: 0.01 },
      from: 'from x 1000 to x 4000',
    },
    { name: 'cut back to the tee', given: () => cutOff(100), expect: 'pass' },
    { name: 'a branch nobody can see', given: unseen, expect: 'cantTell' },
  ],
});
