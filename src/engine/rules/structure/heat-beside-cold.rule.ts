import { figure } from '../../../reference/figure.ts';
import { exact } from '../../../report/quantity.ts';
import { findHeatBesideCold, type HeatBesideCold, sharedNotches } from '../../building/heat-beside-cold.ts';
import { sayVoid } from '../../building/void-parts.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { RunWords } from '../../example.ts';
import { quantityOf } from '../../gas/said.ts';
import type { Given } from '../../given.ts';
import { atPlace } from '../../places.ts';
import { midSentence, sayRun } from '../../say-names.ts';
import { joisted } from './joist-examples.ts';

/** Does anybody know where the pipe lies? One that was taken for granted may lie elsewhere. */
const placeAssumed = ({ pipe }: HeatBesideCold['cold']): boolean =>
  pipe.edge.sureness === 'assumed' || pipe.heightAssumed;

function toFault(given: Given, found: HeatBesideCold, wanted: Fault['wanted']): Fault[] {
  const { cold, warm } = found;
  const unsure = [cold, warm].filter(placeAssumed);
  const shared = {
    ids: [cold.pipe.run, warm.pipe.run],
    legs: [cold.pipe.edge.id, warm.pipe.edge.id],
    words: {
      cold: sayRun(given.plan, cold.pipe.run),
      warm: midSentence(sayRun(given.plan, warm.pipe.run)),
      space: sayVoid(cold.space),
      apart: `${Math.round(found.apartMm)}`,
      beside: (found.besideMm / 1000).toFixed(1),
    },
    found: exact(found.apartMm, 'mm', 0),
    wanted: wanted ?? null,
    wantedIs: 'atLeast' as const,
    at: atPlace(cold.pipe.storey, found.at),
    more: found.more,
  };
  if (unsure.length === 0) return [{ outcome: 'check', ...shared }];
  const missing = unsure.map((part) => `where the ${midSentence(sayRun(given.plan, part.pipe.run))} lies`);
  return [{ outcome: 'cantTell', ...shared, missing }];
}

function inOneNotch(given: Given): Fault[] {
  const pairs = new Map<string, ReturnType<typeof sharedNotches>>();
  for (const pair of sharedNotches(given)) {
    const key = `${pair.cold.run}|${pair.warm.run}`;
    pairs.set(key, [...(pairs.get(key) ?? []), pair]);
  }
  return [...pairs.values()].flatMap((all): Fault[] => {
    const first = all[0];
    if (!first) return [];
    const { cold, warm } = first;
    return [
      {
        outcome: 'stop',
        say: 'notch',
        ids: [cold.run, warm.run],
        legs: all.flatMap((p) => [p.cold.pipe.edge.id, p.warm.pipe.edge.id]),
        words: {
          cold: sayRun(given.plan, cold.run),
          warm: midSentence(sayRun(given.plan, warm.run)),
          space: sayVoid(cold.space),
        },
        at: atPlace(cold.pipe.storey, cold.met.at),
        more: all.length - 1,
      },
    ];
  });
}

/** Cold and warm along between the same two joists, `apart` between centres. */
const bay = (apart: number, words: RunWords = {}, length = 3000, warm: RunWords = {}) =>
  joisted()
    .run(
      'c',
      'cold',
      [
        [100, 300, 2500],
        [100 + length, 300, 2500],
      ],
      { size: '15x0.7', ...words },
    )
    .run(
      'h',
      'hot',
      [
        [100, 300 + apart, 2500],
        [3100, 300 + apart, 2500],
      ],
      { size: '15x0.7', ...warm },
    ).plan;

const notch = (apart: number) =>
  joisted()
    .run(
      'c',
      'cold',
      [
        [600, 100, 2593],
        [600, 1900, 2593],
      ],
      { size: '15x0.7', insulationMm: 9 },
    )
    .run(
      'h',
      'hot',
      [
        [600 + apart, 100, 2593],
        [600 + apart, 1900, 2593],
      ],
      { size: '15x0.7' },
    ).plan;

export default defineRule({
  id: 'structure/heat-beside-cold',
  topic: 'structure',
  since: '1',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [{ source: 'plumbing-textbook-2019', clause: 'page 325 (page view 337)', table: 'heat-beside-cold' }],
  needs: ['where hot, heating and cold pipes lie in a void', 'which of them are lagged'],
  params: () => ({ apart: figure('heat-beside-cold', 'apart', 'mm') }),
  judge(given, { apart }) {
    if (apart.is !== 'known') return [];
    const wanted = quantityOf(apart);
    return [...inOneNotch(given), ...findHeatBesideCold(given, apart.lo).flatMap((f) => toFault(given, f, wanted))];
  },
  say: {
    fault: {
      title: '{cold} lies {apart} from the {warm} for {beside} m in the {space}, not lagged',
      why: 'In a closed space a warm pipe warms the cold one beside it; water for drinking may not be warmed.',
      todo: 'Lag the cold pipe along there, or part the two.',
    },
    notch: {
      title: '{cold} and {warm} lie in one notch in the {space}',
      why: 'In one notch they touch through the timber: the warm pipe warms the cold one, lagged or not, and they rub as they move.',
      todo: 'Give each a place of its own in the joists.',
    },
    cantTell: {
      title: "Can't tell whether the {warm} warms {cold} in the {space}",
      why: 'As drawn they lie {apart} apart for {beside} m; not known: {missing}.',
      todo: 'Look where it lies, or lag the cold pipe.',
    },
    pass: 'Cold lies far enough from what is warm, or is lagged.',
  },
  examples: [
    {
      name: 'hot 150 from cold between two joists',
      given: () => bay(150),
      expect: 'check',
      found: { lo: 135, hi: 135, tolerance: 0.1 },
      from: '150 between centres less half of 15 twice',
    },
    { name: 'hot 150 from lagged cold', given: () => bay(150, { insulationMm: 9 }), expect: 'pass' },
    { name: 'hot well away', given: () => bay(400), expect: 'pass' },
    { name: 'side by side for a short way', given: () => bay(150, {}, 250), expect: 'pass' },
    {
      name: 'old hot that nobody saw',
      given: () => bay(150, {}, 3000, { option: null, assumed: true }),
      expect: 'cantTell',
    },
    { name: 'hot and cold in one notch', given: () => notch(16), expect: 'stop' },
    { name: 'hot and cold in notches of their own', given: () => notch(200), expect: 'pass' },
  ],
});
