import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { type AnnotateOptions, annotate } from '../../src/drawing/annotate.ts';
import { cull } from '../../src/drawing/cull.ts';
import type { Box, DisplayList, View } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Outcome } from '../../src/report/finding.ts';
import { demo } from './demo.ts';
import { finding } from './finding.ts';
import { countsOf, labels, marksOf, overlap, roomOf, roomOfMark, tagsOf } from './label-room.ts';
import { AFTER } from './small-plan.ts';

const PX_PER_MM = 3.4;

/** A pane of so many px looking at a place, as the stage asks for its labels. */
function pane(centre: readonly [number, number], k: number, width: number, height: number): Box {
  const w = (width / PX_PER_MM / 2) * k;
  const h = (height / PX_PER_MM / 2) * k;
  return { minX: centre[0] - w, maxX: centre[0] + w, minY: centre[1] - h, maxY: centre[1] + h };
}

function drawn(plan: Plan, view: View, k: number, visible: Box, more: Partial<AnnotateOptions> = {}): DisplayList {
  const seen = cull(fragments(plan, view, AFTER), visible, 50 * k).fragments;
  return annotate(seen, { plan, view, mmPerPaperMm: k, visible, ...more });
}

const OUTCOMES: readonly Outcome[] = ['stop', 'check', 'note', 'cantTell'];
/** Findings at every other node of a storey: more than there is ever room for. */
const everywhere = (plan: Plan, storey: string) =>
  Object.values(plan.nodes)
    .filter((n) => n.place.on === 'storey')
    .flatMap((n, i) => {
      if (n.place.on !== 'storey' || i % 2 === 1) return [];
      const at = { storey, x: n.place.x, y: n.place.y, z: 400, ring: i % 3 === 0 };
      return [finding(`f${i}`, OUTCOMES[i % 4] as Outcome, at)];
    });

/** Everything written, and every mark of a finding, in paper mm. */
const rooms = (list: DisplayList, k: number): Box[] => [
  ...labels(list).map(({ item }) => roomOf(item, k)),
  ...countsOf(list).map((item) => roomOf(item, k)),
  ...marksOf(list).map((m) => roomOfMark(m, k)),
];

function check(list: DisplayList, k: number, visible: Box): void {
  for (const room of rooms(list, k)) {
    const out =
      room.minX * k < visible.minX ||
      room.maxX * k > visible.maxX ||
      room.minY * k < visible.minY ||
      room.maxY * k > visible.maxY;
    if (out) throw new Error(`a label at ${JSON.stringify(room)} reaches out of the pane`);
  }
  const marks = marksOf(list).map((m) => roomOfMark(m, k));
  const words = labels(list).map(({ item }) => ({ text: item.text, room: roomOf(item, k) }));
  marks.forEach((mark, i) => {
    for (const { text, room } of words) if (overlap(mark, room)) throw new Error(`a mark lies on "${text}"`);
    for (const other of marks.slice(i + 1)) if (overlap(mark, other)) throw new Error('two marks lie on one another');
  });
}

describe('labels and marks in a pane', () => {
  const views: [string, View, readonly [number, number]][] = [
    ['flat', { kind: 'plan', storey: 'B' }, [4450, 3400]],
    ['flat', { kind: 'plan', storey: 'B', turnDeg: 90 }, [-3400, 4450]],
    ['flat', { kind: 'face', wall: 'BN', side: 'right' }, [2000, 1200]],
    ['two-storey', { kind: 'plan', storey: 'G' }, [3000, 3000]],
  ];
  test.each(views)('%s, %o: wholly inside it, no mark on a word or another mark', (name, view, middle) => {
    const plan = demo(name);
    const storey = view.kind === 'plan' ? view.storey : 'B';
    const measured = new Set(Object.keys(plan.runs).slice(0, 2));
    fc.assert(
      fc.property(
        fc.constantFrom(12, 20, 31, 45, 69, 71, 95, 140),
        fc.constantFrom([736, 700], [344, 640], [996, 780], [736, 180]),
        fc.integer({ min: -3000, max: 3000 }),
        fc.integer({ min: -2000, max: 2000 }),
        (k, size, dx, dy) => {
          const [w, h] = size as [number, number];
          const visible = pane([middle[0] + dx, middle[1] + dy], k, w, h);
          check(
            drawn(plan, view, k, visible, { findings: everywhere(plan, storey).slice(0, 6), measured }),
            k,
            visible,
          );
        },
      ),
      { numRuns: 60 },
    );
  });

  test('what has no place of its own is counted by a mark beside it: none is lost', () => {
    const plan = demo('flat');
    const view = { kind: 'plan', storey: 'B' } as const;
    const visible = pane([4450, 3400], 45, 736, 700);
    const inPane = everywhere(plan, 'B').filter(
      ({ at }) => at && at.x > visible.minX && at.x < visible.maxX && at.y > visible.minY && at.y < visible.maxY,
    );
    const list = drawn(plan, view, 45, visible, { findings: inPane });
    const counted = countsOf(list).reduce((sum, t) => sum + Number(t.text.slice(1)), 0);
    expect(inPane.length).toBeGreaterThan(8);
    expect(marksOf(list).length + counted).toBe(inPane.length);
  });

  test('no label goes where something stands over the drawing', () => {
    const plan = demo('flat');
    const view = { kind: 'plan', storey: 'B' } as const;
    const visible = pane([4450, 3400], 45, 736, 700);
    const left = { ...visible, maxX: (visible.minX + visible.maxX) / 2 };
    const list = drawn(plan, view, 45, visible, { taken: [left], findings: everywhere(plan, 'B').slice(0, 4) });
    const all = rooms(list, 45);
    expect(all.length).toBeGreaterThan(8);
    for (const room of all) expect(room.minX * 45).toBeGreaterThanOrEqual(left.maxX - 1);
  });
});

describe('what a small drawing says', () => {
  const plan = demo('flat');
  const view = { kind: 'plan', storey: 'B' } as const;
  const at = (k: number, w: number, h: number) => drawn(plan, view, k, pane([4450, 3400], k, w, h));
  const texts = (list: DisplayList) => labels(list).map(({ item }) => item.text);

  test('on a phone the rooms have their names, and pipes in a bank only letters', () => {
    const said = texts(at(95, 344, 640));
    for (const room of ['Kitchen', 'Lounge', 'Hall', 'Bed 1', 'Bed 2']) expect(said).toContain(room);
    expect(said).toContain('G 28');
    expect(said).toContain('HF');
    expect(said.some((t) => t.startsWith('HF '))).toBe(false);
  });

  test('on a phone letters of taps and drains are left out', () => {
    const letters = (k: number, w: number, h: number) =>
      labels(at(k, w, h)).filter(({ id, item }) => id in plan.points && item.size === 'small' && item.weight === 400);
    expect(letters(95, 344, 640)).toEqual([]);
    expect(letters(20, 736, 700).length).toBeGreaterThan(0);
  });

  test('letters of a point are light and have no plate, tags are strong and have one', () => {
    const list = at(30, 996, 780);
    for (const { id, item } of labels(list)) {
      if (id in plan.points && item.size === 'small' && item.weight === 400) expect(item.plate).toBeUndefined();
    }
    for (const tag of tagsOf(list)) expect(tag.weight).toBe(600);
  });

  test('the pipes of one appliance are said in its own flag', () => {
    const flags = (k: number) =>
      labels(at(k, 2400, 2000))
        .filter(({ item }) => item.size === 'flag' || item.size === 'flagSecond')
        .map(({ item }) => item.text);
    const close = flags(20);
    expect(close).toContain('New combi, base 1300');
    expect(close.filter((t) => /\bHF 150\b/.test(t))).toHaveLength(1);
  });
});
