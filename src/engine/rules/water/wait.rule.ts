import { type Figure, figure } from '../../../reference/figure.ts';
import { sayFigures } from '../../../report/quantity.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import type { Given } from '../../given.ts';
import { limitFor } from '../../limits.ts';
import { atVertex } from '../../places.ts';
import { midSentence, sayPoint } from '../../say-names.ts';
import { byWait, type HotWay, hotWays } from '../../water-system/hot-ways.ts';
import { hotTo } from './houses.ts';

type Params = { readonly first: Figure };

const wordsOf = (given: Given, w: HotWay, litres: string) => ({
  tap: midSentence(w.name),
  source: midSentence(sayPoint(given.plan, w.source.id)),
  litres,
  metres: sayFigures(w.lengthM),
});

function ofSource(given: Given, ways: readonly HotWay[], first: Figure): Fault[] {
  const limit = limitFor(given.plan, 'hot-wait', ways[0]?.source.id ?? null, first)?.figure;
  if (!limit) return [];
  const slow = ways.filter((w) => (w.wait?.result?.lo ?? 0) > limit.lo).sort(byWait);
  const [worst] = slow;
  if (worst) {
    const litres = worst.litres ? sayFigures({ ...worst.litres, digits: 1 }) : '';
    return [
      {
        outcome: 'check',
        ids: [worst.point.id, worst.source.id],
        legs: worst.sections.flatMap((s) => s.legs),
        words: wordsOf(given, worst, litres),
        found: worst.wait?.result ?? null,
        wanted: limit,
        at: atVertex(given.network, worst.end.vertex),
        more: slow.length - 1,
        working: worst.wait,
        unverified: false,
      },
    ];
  }
  const [dark, ...rest] = ways.filter((w) => w.litres === null);
  if (!dark) return [];
  return [
    {
      outcome: 'cantTell',
      ids: [dark.point.id, dark.source.id],
      words: wordsOf(given, dark, ''),
      missing: dark.missing,
      at: atVertex(given.network, dark.end.vertex),
      more: rest.length,
    },
  ];
}

function judge(given: Given, { first }: Params): Fault[] {
  const bySource = new Map<string, HotWay[]>();
  for (const w of hotWays(given)) {
    // Pipe that stays as it was is no doing of this job.
    if (!w.isNew || w.isTail) continue;
    bySource.set(w.source.id, [...(bySource.get(w.source.id) ?? []), w]);
  }
  return [...bySource.values()].flatMap((ways) => ofSource(given, ways, first));
}

export default defineRule<Params>({
  id: 'water/wait',
  topic: 'water',
  since: '2',
  basis: 'recommendation',
  lifeSafety: false,
  cites: [
    { source: 'plumbing-textbook-2019', clause: 'guidance G18.4 (page view 360)', table: 'hot-wait' },
    { source: 'house-building-standards-hot-water', clause: '8.1.5', table: 'hot-wait' },
  ],
  needs: ['size and length of the hot pipe', 'the flow of each tap'],
  params: () => ({ first: figure('hot-wait', 'first reading', 'seconds') }),
  judge,
  say: {
    fault: {
      title: 'A long wait for hot water at the {tap}',
      why: 'All {litres} litres between the {source} and this tap run out cold first: it is the first complaint after a move.',
      todo: 'Go a size down where the flow allows, tee this tap off sooner, or tell the customer before the work.',
    },
    cantTell: {
      title: "Can't tell how long hot water takes to the {tap}",
      why: 'Not known: {missing}. The pipe from the {source} is {metres} m long.',
      todo: 'Look what size it is, and set it on the pipe.',
    },
    pass: 'Hot water comes within the first reading, or may do so.',
  },
  examples: [
    { name: 'a basin five metres off in 15', given: () => hotTo(5), expect: 'pass' },
    {
      name: 'a basin twenty-five metres off in 22',
      given: () => hotTo(25, { size: '22x0.9' }),
      expect: 'check',
    },
    { name: 'a pipe nobody read', given: () => hotTo(5, { size: null }), expect: 'cantTell' },
  ],
});
