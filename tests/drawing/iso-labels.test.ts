import { describe, expect, test } from 'vitest';
import type { Item, TextItem, Vec } from '../../src/drawing/display-list.ts';
import { annotateIso, type IsoList } from '../../src/drawing/iso/annotate-iso.ts';
import { type IsoDrawing, isoDrawing } from '../../src/drawing/iso/iso-drawing.ts';
import type { Quarter } from '../../src/drawing/iso/iso-plane.ts';
import { type Medium, TEXT_MM } from '../../src/drawing/look/tokens.ts';
import { plateMm } from '../../src/drawing/paint/prims-of.ts';
import { textWidth } from '../../src/drawing/text/measure.ts';
import { demo } from './demo.ts';
import { field } from './small-plan.ts';

const DEMOS = ['flat', 'semi', 'two-storey', 'extension'];
const CASE = (plan: ReturnType<typeof demo>) =>
  ({ option: Object.keys(plan.options)[0] ?? null, when: 'after' }) as const;

interface Turned {
  readonly text: string;
  readonly middle: Vec;
  readonly along: Vec;
  readonly half: Vec;
}

/** The room of the letters themselves, turned as they are, in mm of paper: worked out from the shapes alone. */
function roomOf(item: TextItem, k: number, medium: Medium): Turned {
  const size = TEXT_MM[medium][item.size];
  const plate = item.plate === undefined ? undefined : plateMm(item.text, size);
  const w = plate?.w ?? textWidth(item.text, size, item.weight);
  // From the baseline to the top of a capital: figures and capitals reach no further.
  const h = plate?.h ?? size * 0.72;
  const a = (item.turnDeg * Math.PI) / 180;
  const along: Vec = [Math.cos(a), Math.sin(a)];
  const shift = item.align === 'left' ? w / 2 : item.align === 'right' ? -w / 2 : 0;
  const [ox, oy] = item.offsetMm ?? [0, 0];
  return {
    text: item.text,
    middle: [item.at[0] / k + ox + along[0] * shift, item.at[1] / k + oy + along[1] * shift],
    along,
    half: [w / 2, h / 2],
  };
}

const corners = ({ middle: [x, y], along: [c, s], half: [w, h] }: Turned): Vec[] =>
  [
    [w, h],
    [-w, h],
    [-w, -h],
    [w, -h],
  ].map(([p = 0, q = 0]) => [x + p * c - q * s, y + p * s + q * c]);

/** Two turned boxes lie apart where some side of one parts them. */
function overlap(p: Turned, q: Turned): boolean {
  const [a, b] = [corners(p), corners(q)];
  return [p, q].every(({ along: [c, s] }) =>
    (
      [
        [c, s],
        [-s, c],
      ] as const
    ).every(([x, y]) => {
      const on = (pts: Vec[]): number[] => pts.map((pt) => pt[0] * x + pt[1] * y);
      const [u, v] = [on(a), on(b)];
      return Math.max(...u) > Math.min(...v) + 0.05 && Math.max(...v) > Math.min(...u) + 0.05;
    }),
  );
}

const wordsOf = (list: IsoList, k: number, medium: Medium): Turned[] =>
  list.items
    .filter(({ group }) => group === 'label')
    .flatMap(({ items }) => items.filter((i): i is TextItem => i.t === 'text').map((i) => roomOf(i, k, medium)));

function collisions(list: IsoList, k: number, medium: Medium): string[] {
  const words = wordsOf(list, k, medium);
  return words.flatMap((p, i) =>
    words.slice(i + 1).flatMap((q) => (overlap(p, q) ? [`"${p.text}" on "${q.text}"`] : [])),
  );
}

function overNodes(drawing: IsoDrawing, list: IsoList, k: number, medium: Medium): string[] {
  const nodes = drawing.legs.flatMap((l) => [l.a, l.b]).map(([x, y]): Vec => [x / k, y / k]);
  return wordsOf(list, k, medium).flatMap((word) => {
    const [c, s] = word.along;
    const covered = nodes.some(([x, y]) => {
      const [dx, dy] = [x - word.middle[0], y - word.middle[1]];
      return Math.abs(dx * c + dy * s) < word.half[0] && Math.abs(-dx * s + dy * c) < word.half[1];
    });
    return covered ? [word.text] : [];
  });
}

const ALL = { lengths: true, rooms: true };

describe.each(DEMOS)('labels of the demo plan "%s"', (name) => {
  const plan = demo(name);
  const chosen = CASE(plan);

  test.each([
    [20, 'screen'],
    [50, 'screen'],
    [120, 'screen'],
    [50, 'sheet'],
  ] as const)('at 1:%i on a %s none lies on another or on a node, from any side', (k, medium) => {
    for (const quarter of [0, 1, 2, 3] as Quarter[]) {
      const drawing = isoDrawing(plan, chosen, { of: 'all' }, quarter);
      const list = annotateIso(drawing, { mmPerPaperMm: k, medium, ...ALL });
      expect(collisions(list, k, medium)).toEqual([]);
      expect(overNodes(drawing, list, k, medium)).toEqual([]);
      expect(wordsOf(list, k, medium).length).toBeGreaterThan(10);
    }
  });

  test('near enough, every run tells each of its lengths once', () => {
    for (const run of Object.keys(plan.runs)) {
      const drawing = isoDrawing(plan, chosen, { of: 'run', run }, 0);
      const list = annotateIso(drawing, { mmPerPaperMm: 5, ...ALL });
      const told = list.items.filter((i) => i.group === 'label').flatMap((i) => i.items);
      const figures = told.filter((i): i is TextItem => i.t === 'text' && i.size === 'dimension' && i.weight === 400);
      expect({ run, untold: list.untold }).toEqual({ run, untold: 0 });
      expect(figures.map((i) => i.text).sort()).toEqual(drawing.lengths.map((l) => l.text).sort());
    }
  });
});

test('figures are read from below or from the right', () => {
  const plan = demo('flat');
  const list = annotateIso(isoDrawing(plan, CASE(plan), { of: 'all' }, 1), { mmPerPaperMm: 30, ...ALL });
  const turns = list.items.flatMap((i) => i.items).flatMap((i: Item) => (i.t === 'text' ? [i.turnDeg] : []));
  for (const turn of [0, 30, -30, 90]) expect(turns.some((t) => Math.abs(t - turn) < 0.01)).toBe(true);
  // What falls lies a little off the axis, and is read the same way.
  expect(turns.filter((t) => t <= -90 || t > 90)).toEqual([]);
});

test('lengths can be put away', () => {
  const plan = demo('flat');
  const drawing = isoDrawing(plan, CASE(plan), { of: 'all' }, 0);
  const count = (lengths: boolean): number =>
    annotateIso(drawing, { mmPerPaperMm: 30, rooms: false, lengths }).items.flatMap((i) => i.items).length;
  expect(count(true)).toBeGreaterThan(count(false));
});

test('nothing is written where something stands over the drawing, nor past what shows', () => {
  const plan = demo('flat');
  const drawing = isoDrawing(plan, CASE(plan), { of: 'all' }, 0);
  const k = 40;
  const visible = drawing.box;
  const taken = { ...visible, maxY: (visible.minY + visible.maxY) / 2 };
  const list = annotateIso(drawing, { mmPerPaperMm: k, visible, taken: [taken], ...ALL });
  for (const word of wordsOf(list, k, 'screen')) expect(word.middle[1] * k).toBeGreaterThan(taken.maxY);
});

test('a thousand runs are drawn, and told where so few are in view that they can be read', () => {
  const plan = field(1000);
  const start = performance.now();
  const drawing = isoDrawing(plan, { option: 'A', when: 'after' }, { of: 'all' }, 0);
  const all = annotateIso(drawing, { mmPerPaperMm: 400, ...ALL });
  expect(all.crowded).toBe(true);
  expect(wordsOf(all, 400, 'screen')).toEqual([]);
  const { minX, minY, maxY } = drawing.box;
  const visible = { minX, maxX: minX + 15_000, minY: (minY + maxY) / 2, maxY: (minY + maxY) / 2 + 15_000 };
  const part = annotateIso(drawing, { mmPerPaperMm: 60, visible, ...ALL });
  expect(part.crowded).toBe(false);
  expect(wordsOf(part, 60, 'screen').length).toBeGreaterThan(50);
  expect(collisions(part, 60, 'screen')).toEqual([]);
  // A quarter of it is usual: this only catches a square of the number of runs.
  expect(performance.now() - start).toBeLessThan(8000);
});
