import { describe, expect, test } from 'vitest';
import { annotate } from '../../src/drawing/annotate.ts';
import type { Fragment, Item, Vec, View } from '../../src/drawing/display-list.ts';
import { drawSvg } from '../../src/drawing/draw-svg.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { liveFragments } from '../../src/drawing/live-fragments.ts';
import { madeSoFar } from '../../src/drawing/memo/remember.ts';
import { turnUnder } from '../../src/editor/fold.ts';
import { demo, frozen } from './demo.ts';
import { AFTER } from './small-plan.ts';

const FLAT: View = { kind: 'plan', storey: 'B' };
const turnedView = (turnDeg: number): View => ({ ...FLAT, kind: 'plan', storey: 'B', turnDeg });
const TURNS = [90, 180, -90, 31.5, -120];

const key = (f: Fragment): string => `${f.map} ${f.id} ${f.layer}`;
const turn = ([x, y]: Vec, deg: number): Vec => {
  const a = (deg * Math.PI) / 180;
  return [x * Math.cos(a) - y * Math.sin(a), x * Math.sin(a) + y * Math.cos(a)];
};

function places(item: Item): readonly Vec[] {
  if (item.t === 'line') return item.pts;
  if (item.t === 'area') return item.rings.flat();
  return item.t === 'corner' ? [item.at, item.a, item.b] : [item.at];
}

const far = (p: Vec, q: Vec): number => Math.hypot(p[0] - q[0], p[1] - q[1]);
const texts = (items: readonly Item[]) => items.flatMap((i) => (i.t === 'text' ? [i] : []));

describe.each(TURNS)('a plan turned by %d', (deg) => {
  const plan = demo('flat');
  const flat = fragments(plan, FLAT, AFTER);
  const turned = fragments(plan, turnedView(deg), AFTER);

  test('is all of the plan, turned about the datum', () => {
    expect(turned.map(key)).toEqual(flat.map(key));
    const wedges = /^wedge/;
    turned.forEach((f, i) => {
      const was = flat[i] as Fragment;
      expect(f.items).toHaveLength(was.items.length);
      f.items.forEach((item, n) => {
        const before = was.items[n] as Item;
        const [now, then] = [places(item), places(before)];
        expect(now).toHaveLength(then.length);
        now.forEach((p, j) => {
          expect(far(p, turn(then[j] as Vec, deg))).toBeLessThan(1e-6);
        });
        if (item.t === 'mark' && before.t === 'mark' && !wedges.test(item.mark)) expect(item.mark).toBe(before.mark);
      });
    });
  });

  test('banks are spread the same way, turned', () => {
    const spread = (all: readonly Fragment[]) =>
      all.flatMap((f) =>
        f.items.flatMap((i) => (i.t === 'line' ? [(i.spread ?? []).flatMap((s) => s.map((m) => m.gaps.length))] : [])),
      );
    expect(spread(turned).flat().length).toBeGreaterThan(0);
    expect(spread(turned)).toEqual(spread(flat));
  });

  test('words are read from below, measures from the right at most', () => {
    for (const mmPerPaperMm of [20, 50]) {
      const list = annotate(turned, { plan, view: turnedView(deg), mmPerPaperMm });
      const words = texts(list.items.flatMap((i) => i.items));
      expect(words.length).toBeGreaterThan(30);
      for (const word of words) {
        if (word.size !== 'dimension') expect(word.turnDeg).toBe(0);
        else expect(word.turnDeg).toBeGreaterThan(-90);
        if (word.size === 'dimension') expect(word.turnDeg).toBeLessThanOrEqual(100);
      }
      const names = list.items.flatMap((i) => (i.group === 'label' ? texts(i.items) : [])).map((t) => t.text);
      expect(names).toEqual(expect.arrayContaining(['Kitchen', 'Lounge']));
    }
  });

  test('is kept, and a point that changes renews itself and what hangs on it', () => {
    const made = madeSoFar();
    expect(fragments(plan, turnedView(deg), AFTER)).toBe(turned);
    expect(madeSoFar()).toBe(made);
    const hob = plan.points['B-HB'];
    if (!hob) throw new Error('the flat has a hob');
    const next = frozen({ ...plan, points: { ...plan.points, 'B-HB': { ...hob, fields: { ...hob.fields } } } });
    const were = new Set(turned);
    const renewed = fragments(next, turnedView(deg), AFTER).filter((f) => !were.has(f));
    expect(renewed.map(key)).toEqual(['points B-HB point', 'legs B-g3-2 run', 'legs B-g3-1 item']);
  });

  test('what is dragged is drawn where it lies in it', () => {
    const ids = new Set(['B-HB', ...Object.values(plan.openings).map((o) => o.id)]);
    const live = liveFragments(plan, plan, turnedView(deg), AFTER, ids);
    expect(live.length).toBeGreaterThan(5);
    for (const f of live) {
      const still = turned.find((t) => t.id === f.id && t.map === f.map);
      expect(f.box.minX).toBeCloseTo(still?.box.minX ?? Number.NaN, 6);
      expect(f.box.maxY).toBeCloseTo(still?.box.maxY ?? Number.NaN, 6);
    }
  });
});

test('the sizes of rooms stand below and to the left of a house that is turned by right angles', () => {
  const plan = demo('flat');
  for (const deg of [0, 90, 180, -90]) {
    const wishes = fragments(plan, turnedView(deg), AFTER).flatMap((f) => (f.layer === 'wall' ? f.wishes : []));
    const sides = wishes.flatMap((w) => (w.w === 'dimension' ? [w.side.map((n) => Math.round(n) + 0).join()] : []));
    expect(new Set(sides)).toEqual(new Set(['0,-1', '-1,0']));
  }
});

test('a pipe on a wall is drawn straight under where the face shows it', () => {
  const plan = demo('flat');
  const ends = (view: View): ReadonlyMap<string, readonly Vec[]> =>
    new Map(
      fragments(plan, view, AFTER).flatMap((f) => {
        const line = f.layer === 'run' && f.map === 'legs' ? f.items.find((i) => i.t === 'line') : undefined;
        return line?.t === 'line' ? [[f.id, line.pts] as const] : [];
      }),
    );
  let compared = 0;
  for (const wall of Object.values(plan.walls).filter((w) => w.storey === 'B')) {
    for (const side of ['left', 'right'] as const) {
      const up = ends({ kind: 'face', wall: wall.id, side });
      const below = ends(turnedView(turnUnder(wall, side)));
      const offs = [...up].flatMap(([id, pts]) =>
        (below.get(id) ?? []).map((p, i) => p[0] - (pts[i]?.[0] ?? Number.NaN)),
      );
      if (offs.length === 0) continue;
      expect(Math.max(...offs) - Math.min(...offs)).toBeLessThan(1e-6);
      compared += offs.length;
    }
  }
  expect(compared).toBeGreaterThan(20);
});

test('north on a sheet is turned with the plan', () => {
  const plan = demo('flat');
  const svg = (view: View) => drawSvg(plan, view, AFTER, 'print', { scale: 50 });
  expect(svg(turnedView(0))).toBe(svg(FLAT));
  expect(svg(turnedView(90))).not.toBe(svg(FLAT));
});
