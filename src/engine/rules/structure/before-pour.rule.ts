import type { Void } from '../../../plan/records/building.ts';
import { exact } from '../../../report/quantity.ts';
import { sayVoid, type VoidPart } from '../../building/void-parts.ts';
import { defineRule, type Fault } from '../../define-rule.ts';
import { example } from '../../example.ts';
import type { Given } from '../../given.ts';
import { atEdge } from '../../places.ts';
import { midSentence, sayAll, sayRun } from '../../say-names.ts';

/** A slab that is still to be cast says so by its date, known or not; one that is there has none. */
const toBeCast = (space: Void): boolean => space.kind === 'slab' && space.pourDate !== undefined;

function judge(given: Given): Fault[] {
  const groups = new Map<string, VoidPart[]>();
  for (const part of given.voidParts) {
    if (part.pipe.edge.state !== 'new' || !toBeCast(part.space)) continue;
    groups.set(part.space.id, [...(groups.get(part.space.id) ?? []), part]);
  }
  return [...groups.values()].flatMap((parts): Fault[] => {
    const first = parts[0];
    if (!first) return [];
    const runs = [...new Set(parts.map((p) => p.pipe.run))];
    const names = runs.map((r, i) => (i === 0 ? sayRun(given.plan, r) : midSentence(sayRun(given.plan, r))));
    const date = first.space.pourDate ?? null;
    const shared = {
      ids: [first.space.id],
      legs: parts.map((p) => p.pipe.edge.id),
      words: { runs: sayAll(names), space: sayVoid(first.space), date: date ?? '' },
      found: exact(parts.reduce((sum, p) => sum + p.lengthMm, 0) / 1000, 'm', 1),
      at: atEdge(given.network, first.pipe.edge.id),
    };
    if (date === null) return [{ outcome: 'cantTell', ...shared, missing: ['the day of the pour'] }];
    return [{ outcome: 'note', ...shared }];
  });
}

const house = (pourDate?: string | null) => {
  const e = example().run(
    'k',
    'condensate',
    [
      [500, 500, -100],
      [2500, 500, -110],
    ],
    { kind: 'waste', size: '32' },
  );
  e.plan.voids.v = {
    id: 'v',
    storey: 'ground',
    name: 'New slab',
    kind: 'slab',
    outline: [
      { x: 0, y: 0 },
      { x: 3000, y: 0 },
      { x: 3000, y: 1000 },
      { x: 0, y: 1000 },
    ],
    holes: [],
    bottom: { from: 'datum', of: null, mm: -200 },
    top: { from: 'datum', of: null, mm: 0 },
    joists: null,
    bearings: [],
    ventilated: null,
    mayBeCut: true,
    option: null,
    sureness: 'seen',
    ...(pourDate === undefined ? {} : { pourDate }),
  };
  return e.plan;
};

export default defineRule({
  id: 'structure/before-pour',
  topic: 'structure',
  since: '1',
  basis: 'practice',
  lifeSafety: false,
  cites: [{ source: 'trade-practice', clause: 'hold points' }],
  needs: ['the day a slab is poured'],
  params: () => ({}),
  judge,
  say: {
    fault: {
      title: '{runs} must be in and tested before the {space} is poured on {date}',
      why: 'After the pour nothing in it can be reached, moved or added.',
      todo: 'Give the builder this hold point: place and height of every pipe end, sleeves, test and photos, before concrete.',
    },
    cantTell: {
      title: '{runs} must be in before the {space} is poured; when is that?',
      why: 'After the pour nothing in it can be reached, moved or added, and {missing} is not told.',
      todo: 'Ask the builder, and set the day on the slab.',
    },
    pass: 'Nothing waits for a pour.',
  },
  examples: [
    {
      name: 'a drain below a slab with a day',
      given: () => house('2026-05-01'),
      expect: 'note',
      found: { lo: 2, hi: 2, tolerance: 0.01 },
      from: 'two metres drawn in it',
    },
    { name: 'a drain below a slab with no day yet', given: () => house(null), expect: 'cantTell' },
    { name: 'a drain in a slab that is there', given: () => house(), expect: 'pass' },
  ],
});
