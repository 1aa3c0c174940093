import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { annotate } from '../../src/drawing/annotate.ts';
import type { Box, Fragment, TextItem, Vec, View } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { paperAt } from '../../src/drawing/labels/paper.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { demo } from './demo.ts';
import { labels, overlap, roomOf, tagsOf } from './label-room.ts';
import { AFTER, BEFORE, PLAN_VIEW, page, room, run } from './small-plan.ts';

const holds = (b: Box, [x, y]: Vec): boolean => x > b.minX && x < b.maxX && y > b.minY && y < b.maxY;

/** Ends of every drawn leg in paper mm. */
function ends(of: readonly Fragment[], k: number): Vec[] {
  const paper = paperAt(k);
  return of
    .filter((f) => f.layer === 'run')
    .flatMap((f) => f.items.flatMap((i) => (i.t === 'line' ? i.pts.map((p, n) => paper.at(p, i.spread?.[n])) : [])));
}

function check(plan: Plan, view: View, k: number, chosen: typeof AFTER | typeof BEFORE = AFTER): void {
  const all = fragments(plan, view, chosen);
  const list = annotate(all, { plan, view, mmPerPaperMm: k });
  const rooms = labels(list).map(({ item }) => roomOf(item, k));
  rooms.forEach((a, i) => {
    rooms.slice(i + 1).forEach((b, j) => {
      if (overlap(a, b))
        throw new Error(`"${labels(list)[i]?.item.text}" lies on "${labels(list)[i + 1 + j]?.item.text}"`);
    });
  });
  const nodes = ends(all, k);
  for (const tag of tagsOf(list)) {
    const covered = nodes.find((n) => holds(roomOf(tag, k), n));
    if (covered) throw new Error(`"${tag.text}" covers a node at ${covered}`);
  }
}

describe('labels of the demo plans', () => {
  const cases: [string, View][] = [
    ['flat', { kind: 'plan', storey: 'B' }],
    ['flat', { kind: 'face', wall: 'BN', side: 'right' }],
    ['flat', { kind: 'face', wall: 'BE', side: 'left' }],
    ['two-storey', { kind: 'plan', storey: 'G' }],
    ['two-storey', { kind: 'plan', storey: 'F' }],
  ];
  for (const [name, view] of cases) {
    for (const k of [20, 39, 50, 99, 100, 160]) {
      test(`${name}, ${JSON.stringify(view)} at 1:${k}: none lies on another, no tag on a node`, () => {
        check(demo(name), view, k);
        check(demo(name), view, k, BEFORE);
      });
    }
  }
});

describe('labels of any pipes', () => {
  const place = fc.tuple(
    fc.integer({ min: 0, max: 60 }).map((n) => n * 100),
    fc.integer({ min: 0, max: 40 }).map((n) => n * 100),
    fc.constantFrom(150, 210, 500, 900, 2300),
  );
  const service = fc.constantFrom('gas', 'heatingFlow', 'heatingReturn', 'hot', 'cold', 'condensate');
  const pipes = fc.array(fc.record({ service, through: fc.array(place, { minLength: 2, maxLength: 5 }) }), {
    minLength: 1,
    maxLength: 8,
  });

  test('no two overlap and no tag covers a node', () => {
    fc.assert(
      fc.property(pipes, fc.constantFrom(20, 50, 80, 120), (runs, k) => {
        const plan = room(page());
        for (const [i, { service: of, through }] of runs.entries()) run(plan, `r${i}`, through, { service: of });
        check(plan, PLAN_VIEW, k);
      }),
      { numRuns: 60 },
    );
  });
});

describe('tags', () => {
  const drawn = (plan: Plan, k: number, more = {}) =>
    annotate(fragments(plan, PLAN_VIEW, AFTER), { plan, view: PLAN_VIEW, mmPerPaperMm: k, ...more });

  test('one for a stretch of one size, in the middle of its longest leg', () => {
    const plan = page();
    run(
      plan,
      'g',
      [
        [0, 0, 100],
        [1000, 0, 100],
        [1000, 3000, 100],
      ],
      { size: '28x0.9' },
    );
    const tags = tagsOf(drawn(plan, 50));
    expect(tags.map((t) => t.text)).toEqual(['G 28']);
    expect(tags[0]?.at).toEqual([1000, 1500]);
  });

  test('on a long leg another each 160 mm of paper', () => {
    const plan = page();
    run(
      plan,
      'g',
      [
        [0, 0, 100],
        [8100, 0, 100],
      ],
      { size: '28x0.9' },
    );
    expect(tagsOf(drawn(plan, 39)).map((t) => Math.round(t.at[0]))).toEqual([2025, 6075]);
    expect(tagsOf(drawn(plan, 60))).toHaveLength(1);
  });

  test('on the part of a leg that shows', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [8000, 0, 100],
    ]);
    const visible = { minX: 0, minY: -500, maxX: 2000, maxY: 500 };
    expect(tagsOf(drawn(plan, 50, { visible })).map((t) => t.at[0])).toEqual([1000]);
  });

  test('beside a leg that is too short to carry one', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [150, 0, 100],
    ]);
    const [tag] = tagsOf(drawn(plan, 50));
    expect(tag?.text).toBe('G 22');
    expect(Math.hypot(...(tag?.at ?? [0, 0]))).toBeGreaterThan(100);
  });

  test('two sizes of one run have a tag each', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [2000, 0, 100],
      [4000, 0, 100],
    ]);
    const leg = plan.legs['g-2'];
    if (leg) plan.legs['g-2'] = { ...leg, tube: { kind: 'copper', size: '15x0.7' } };
    expect(
      tagsOf(drawn(plan, 50))
        .map((t) => t.text)
        .sort(),
    ).toEqual(['G 15', 'G 22']);
  });
});

describe('by scale', () => {
  const plan = demo('flat');
  const view = { kind: 'plan', storey: 'B' } as const;
  const texts = (k: number) =>
    labels(annotate(fragments(plan, view, AFTER), { plan, view, mmPerPaperMm: k })).map(({ item }) => item);
  const flags = (items: readonly TextItem[]) => items.filter((i) => i.size === 'flag');
  const tags = (items: readonly TextItem[]) => items.filter((i) => i.plate !== undefined);

  test('at 1:99 flags and tags show', () => {
    expect(flags(texts(99)).length).toBeGreaterThan(0);
    expect(tags(texts(99)).length).toBeGreaterThan(0);
  });
  test('at 1:100 flags go and tags stay', () => {
    expect(flags(texts(100))).toEqual([]);
    expect(tags(texts(100)).length).toBeGreaterThan(0);
  });
  test('at 1:200 tags stay, past it they go', () => {
    expect(tags(texts(200)).length).toBeGreaterThan(0);
    expect(texts(201)).toEqual([]);
  });
});

describe('a chosen run is measured', () => {
  test('its legs carry their lengths, centre to centre', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [2400, 0, 100],
      [2400, 1300, 100],
    ]);
    run(
      plan,
      'c',
      [
        [0, 2000, 100],
        [2400, 2000, 100],
      ],
      { service: 'cold' },
    );
    const list = annotate(fragments(plan, PLAN_VIEW, AFTER), {
      plan,
      view: PLAN_VIEW,
      mmPerPaperMm: 50,
      measured: new Set(['g']),
    });
    const sizes = labels(list).filter(({ item }) => item.size === 'dimension');
    expect(sizes.map(({ item }) => [item.text, item.turnDeg])).toEqual([
      ['2400', 0],
      ['1300', 90],
    ]);
  });
  test('what is assumed has a dotted underline', () => {
    const plan = page();
    run(
      plan,
      'g',
      [
        [0, 0, 100],
        [2400, 0, 100],
      ],
      { option: null, sureness: 'assumed' },
    );
    const list = annotate(fragments(plan, PLAN_VIEW, AFTER), {
      plan,
      view: PLAN_VIEW,
      mmPerPaperMm: 50,
      measured: new Set(['g']),
    });
    expect(labels(list).find(({ item }) => item.size === 'dimension')?.item.underline).toBe('dotted');
  });
});
