import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example, type RunWords } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { sayRun, saySize } from '../../say-names.ts';
import { scaleOf } from '../../water/draw-offs.ts';
import { type SectionLoad, sectionLoads } from '../../water-system/section-loads.ts';

type Params = { readonly pipe: Figure; readonly branch: Figure };

const overBy = (l: SectionLoad): number => (l.velocity?.lo ?? 0) / l.limit.lo;

const newLeg = (given: Given, l: SectionLoad): string | undefined =>
  l.section.legs.find((leg) => given.network.edges.get(leg)?.state === 'new');

function judge(given: Given): Fault[] {
  const fresh = sectionLoads(given).filter((l) => l.isNew);
  const byRun = new Map<string, SectionLoad[]>();
  for (const l of fresh) {
    const run = given.network.edges.get(newLeg(given, l) ?? '')?.run;
    if (run !== undefined && overBy(l) > 1) byRun.set(run, [...(byRun.get(run) ?? []), l]);
  }
  const fast = [...byRun].flatMap(([run, all]): Fault[] => {
    const [worst] = all.sort((a, b) => overBy(b) - overBy(a));
    if (!worst?.velocity) return [];
    return [
      {
        outcome: 'check',
        ids: [run],
        legs: worst.section.legs,
        words: {
          run: sayRun(given.plan, run),
          size: saySize(worst.section.tube),
          flow: sayFigures({ ...worst.flow, hi: worst.flow.lo }),
        },
        found: worst.velocity,
        wanted: worst.limit,
        at: atEdge(given.network, newLeg(given, worst)),
        more: all.length - 1,
        cites: [worst.limit.cite],
      },
    ];
  });
  const [dark, ...rest] = fresh.filter((l) => l.velocity === null && l.section.tube.size === null && l.flow.lo > 0);
  const leg = dark && newLeg(given, dark);
  const run = given.network.edges.get(leg ?? '')?.run;
  if (!dark || run === undefined) return fast;
  return [
    ...fast,
    {
      outcome: 'cantTell',
      ids: [run],
      legs: dark.section.legs,
      words: { run: sayRun(given.plan, run) },
      missing: ['its size'],
      at: atEdge(given.network, leg),
      more: rest.length,
    },
  ];
}

/** Bath taps on a cold pipe of one size. */
const toBath = (words: RunWords, flowLPerMin: number | null = null) =>
  example()
    .point('stop-tap', 'stop', [0, 0, 300])
    .point('bath-taps', 'bath', [4000, 0, 500], { flowLPerMin })
    .run(
      'cold',
      'cold',
      [{ point: 'stop', connection: 'outlet' }, [2000, -300, 400], { point: 'bath', connection: 'cold' }],
      words,
    ).plan;

export default defineRule<Params>({
  id: 'water/velocity',
  topic: 'water',
  since: '2',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'bs-6700-handbook', clause: 'chapter 5', table: 'water-velocity' }],
  needs: ['size of the pipe', 'the flow of what it feeds'],
  params({ plan }) {
    const scale = scaleOf(plan.basis.editions) ?? '';
    return { pipe: figure('water-velocity', scale, 'pipe'), branch: figure('water-velocity', scale, 'branch') };
  },
  judge,
  say: {
    fault: {
      title: '{run} in {size} is too small for its flow',
      why: 'At {flow} l/s and more the water runs so fast that the pipe is loud, wears at its bends, and loses its pressure on the way.',
      todo: 'Go a size up, or let it feed less.',
    },
    cantTell: {
      title: "Can't tell how fast water runs in {run}",
      why: 'Not known: {missing}. It feeds taps whose flow is known.',
      todo: 'Set its size.',
    },
    pass: 'Water runs no faster than the standard has it.',
  },
  examples: [
    { name: 'a bath on 15', given: () => toBath({ size: '15x0.7' }), expect: 'pass' },
    {
      name: 'a bath on 10',
      given: () => toBath({ size: '10x0.6' }),
      expect: 'check',
      found: { lo: 4.93, hi: 4.93, tolerance: 0.03 },
      from: '0.3 l/s in a bore of 8.8',
    },
    { name: 'a size nobody told', given: () => toBath({ size: null }), expect: 'cantTell' },
    { name: 'thirty litres a minute on 15', given: () => toBath({ size: '15x0.7' }, 30), expect: 'check' },
  ],
});
