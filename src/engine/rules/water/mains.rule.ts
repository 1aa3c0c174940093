import { type Figure, figure } from '../../../reference/figure.ts';
import { exact, sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atPoint } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { type CombiFlow, combiFlows } from '../../water-system/combi-flow.ts';
import { mainsOf } from '../../water-system/mains-readings.ts';
import { combi, measured } from './houses.ts';

type Params = { readonly least: Figure };

const SECONDS = 60;

function short(given: Given, c: CombiFlow, least: Figure): Fault[] {
  const { makes, byMains } = c;
  if (byMains === null || byMains.hi === null || least.is !== 'known') return [];
  const shower = least.lo * SECONDS;
  const words = {
    boiler: midSentence(sayPoint(given.plan, c.point.id)),
    reaches: sayFigures({ ...byMains, lo: byMains.hi }),
    makes: makes ? sayFigures(makes) : '',
  };
  const base = {
    ids: [c.point.id],
    at: atPoint(given.plan, c.point.id),
    words,
    found: byMains,
    wantedIs: 'atLeast' as const,
  };
  if (byMains.hi < shower)
    return [{ outcome: 'stop', say: 'nothing', ...base, wanted: exact(shower, 'litres/min', 1, least.sureness) }];
  return makes && byMains.hi < makes.lo ? [{ outcome: 'check', ...base, wanted: makes }] : [];
}

/** New things that live off the mains: a combi, an unvented cylinder. */
function hungry(given: Given): readonly string[] {
  if (given.case.when === 'before') return [];
  const vessels = Object.values(given.plan.points).filter(
    (p) =>
      p.kind === 'cylinder' &&
      p.fields.unvented === true &&
      p.option !== null &&
      given.network.alive.has('points', p.id),
  );
  return [...combiFlows(given).flatMap((c) => (c.isNew ? c.point.id : [])), ...vessels.map((p) => p.id)].sort();
}

function judge(given: Given, { least }: Params): Fault[] {
  if (mainsOf(given).isRead) return combiFlows(given).flatMap((c) => (c.isNew ? short(given, c, least) : []));
  const [first, ...rest] = hungry(given);
  if (first === undefined) return [];
  return [
    {
      outcome: 'cantTell',
      ids: [first],
      at: atPoint(given.plan, first),
      words: { boiler: midSentence(sayPoint(given.plan, first)) },
      missing: ['pressure and flow of the mains'],
      more: rest.length,
    },
  ];
}

export default defineRule<Params>({
  id: 'water/mains',
  topic: 'water',
  since: '2',
  basis: 'practice',
  lifeSafety: false,
  cites: [
    { source: 'trade-practice', clause: 'hot water' },
    { source: 'own-sums', clause: 'what is drawn on from measured pressure', table: 'water-mains' },
  ],
  needs: ['pressure and flow of the mains', 'hot water flow or heat output of the boiler'],
  params: () => ({ least: figure('water-design-flows', 'shower', 'least') }),
  judge,
  say: {
    fault: {
      title: 'The mains give the {boiler} less than it can warm',
      why: 'At most {reaches} litres a minute reach it and it warms {makes}: a bigger boiler makes no better shower, and a weak shower is blamed on it.',
      todo: 'Say so before it is bought: a smaller combi, a bigger cold pipe, a place lower down, or the supplier asked.',
    },
    nothing: {
      title: 'The mains do not even feed one shower through the {boiler}',
      why: 'At most {reaches} litres a minute reach it, less than the least that a shower runs on.',
      todo: 'Find out why before anything is bought: a half-closed stop tap, an old lead pipe, or the supplier.',
    },
    cantTell: {
      title: "Can't tell whether the mains feed the {boiler}",
      why: 'Not known: {missing}. It gives no more hot water than the cold that reaches it.',
      todo: 'Measure at the kitchen tap: standing pressure, then pressure and litres a minute with it open.',
    },
    pass: 'What was measured is enough for what the boiler warms, or may be.',
  },
  examples: [
    {
      name: 'more in the mains than the boiler warms',
      given: () => measured(combi().plan, { 'mains-standing': 3.5, 'mains-flowing': 2, 'mains-flow': 20 }),
      expect: 'pass',
    },
    {
      name: 'eight litres for a boiler of twelve',
      given: () => measured(combi({ hotRiseK: 35 }).plan, { 'mains-flow': 7 }),
      expect: 'check',
      found: { lo: 0, hi: 7, tolerance: 0.01 },
      from: 'seven litres a minute at the kitchen tap, the most that can reach the boiler',
    },
    {
      name: 'less than a shower',
      given: () => measured(combi().plan, { 'mains-flow': 5 }),
      expect: 'stop',
      found: { lo: 0, hi: 5, tolerance: 0.01 },
      from: 'five litres a minute at the kitchen tap; a shower wants 0.10 l/s at least',
    },
    { name: 'a new combi and no reading', given: () => combi().plan, expect: 'cantTell' },
    { name: 'no boiler at all', given: () => example().plan, expect: 'pass' },
  ],
});
