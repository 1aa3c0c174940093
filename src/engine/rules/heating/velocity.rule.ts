import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { quantityOf } from '../../gas/said.ts';
import type { Given } from '../../given.ts';
import { type HeatSection, heatingOf } from '../../heating-system/solve-heating.ts';
import { atEdge } from '../../places.ts';
import { midSentence, sayRun, saySize } from '../../say-names.ts';
import { primaries } from './circuit-houses.ts';

type Params = { readonly most: Figure };

const newLeg = (given: Given, s: HeatSection): string | undefined =>
  s.section.legs.find((leg) => given.network.edges.get(leg)?.state === 'new');

const speed = (s: HeatSection): number => s.result?.velocity.lo ?? 0;

function judge(given: Given, { most }: Params): Fault[] {
  if (most.is !== 'known') return [];
  const fresh = [...heatingOf(given).sections.values()].filter((s) => !s.kept);
  const [worst, ...others] = fresh.filter((s) => speed(s) > most.lo).sort((a, b) => speed(b) - speed(a));
  const [dark, ...rest] = fresh.filter((s) => s.section.tube.size === null && s.flow.lo > 0);
  const placed = (s: HeatSection, more: number) => {
    const leg = newLeg(given, s);
    const run = given.network.edges.get(leg ?? '')?.run ?? '';
    return {
      ids: [run],
      legs: s.section.legs,
      at: atEdge(given.network, leg),
      more,
      words: {
        run: midSentence(sayRun(given.plan, run)),
        size: saySize(s.section.tube),
        flow: sayFigures({ ...s.flow, hi: s.flow.lo }),
      },
    };
  };
  return [
    ...(worst?.result
      ? [
          {
            ...placed(worst, others.length),
            outcome: 'check' as const,
            found: worst.result.velocity,
            wanted: quantityOf(most),
            cites: [most.cite],
          },
        ]
      : []),
    ...(dark ? [{ ...placed(dark, rest.length), outcome: 'cantTell' as const, missing: ['its size'] }] : []),
  ];
}

export default defineRule<Params>({
  id: 'heating/velocity',
  topic: 'heating',
  since: '2',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'copper-heating-150', clause: 'text beside table 1', table: 'heating-velocity' }],
  needs: ['heat of what is fed', 'size of the pipe'],
  params: () => ({ most: figure('heating-velocity', 'noise', 'most') }),
  judge,
  say: {
    fault: {
      title: 'Water runs too fast in the {run} of {size}',
      why: 'It carries {flow} kg/s or more: above the limit pipes and valves are loud, and the pump works against much.',
      todo: 'Go a size up, or let it feed less.',
    },
    cantTell: {
      title: "Can't tell how fast water runs in the {run}",
      why: 'Not known: {missing}. It carries {flow} kg/s or more.',
      todo: 'Set its size.',
    },
    pass: 'Heating water runs slower than its source calls noisy.',
  },
  examples: [
    { name: '12 kW on 22', given: () => primaries({}), expect: 'pass' },
    { name: '12 kW on 15', given: () => primaries({ words: { size: '15x0.7' } }), expect: 'pass' },
    {
      name: '20 kW on 15',
      given: () => primaries({ words: { size: '15x0.7' }, heatingKw: 20 }),
      expect: 'check',
      found: { lo: 1.686, hi: 1.686, tolerance: 0.01 },
      from: '20 kW over 4.187 x 20 K is 0.2388 kg/s; at 974.8 kg/m3 in a bore of 13.6',
    },
    { name: 'a size nobody told', given: () => primaries({ words: { size: null } }), expect: 'cantTell' },
    {
      name: 'heat nobody told',
      given: () => primaries({ words: { size: '15x0.7' }, heatingKw: null }),
      expect: 'pass',
    },
  ],
});
