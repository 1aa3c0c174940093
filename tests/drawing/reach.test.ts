import { describe, expect, test } from 'vitest';
import type { Item, Vec } from '../../src/drawing/display-list.ts';
import { writeSvg } from '../../src/drawing/paint/write-svg.ts';
import { notTwice } from '../../src/drawing/reach/not-twice.ts';
import { reachDrawing, reachKey } from '../../src/drawing/reach/reach-drawing.ts';
import { bootRoom, hang, reachIn } from '../engine/drainage/reach-house.ts';

const VIEW = { kind: 'plan', storey: 'ground' } as const;
const K = 60;
const plan = bootRoom().plan;
const answers = reachIn(plan);
const all = reachDrawing(plan, VIEW, answers, { looked: null });

const marks = (items: readonly Item[], name: string) =>
  items.flatMap((i) => (i.t === 'mark' && i.mark === name ? [i] : []));
const lengthOf = (parts: readonly (readonly Vec[])[]): number =>
  parts.reduce(
    (sum, p) =>
      sum + p.slice(1).reduce((s, b, i) => s + Math.hypot(b[0] - (p[i]?.[0] ?? 0), b[1] - (p[i]?.[1] ?? 0)), 0),
    0,
  );

describe('lines that share a part', () => {
  test('draw it once, the first of them', () => {
    const [first, second] = notTwice([
      [
        [0, 0],
        [0, 100],
        [50, 100],
      ],
      [
        [0, 0],
        [0, 200],
      ],
    ]);
    expect(first).toEqual([
      [
        [0, 0],
        [0, 100],
        [50, 100],
      ],
    ]);
    expect(second).toEqual([
      [
        [0, 100],
        [0, 200],
      ],
    ]);
  });

  test('lie on one another whichever way they are told, and only where they do', () => {
    const [, other] = notTwice([
      [
        [0, 0],
        [100, 0],
      ],
      [
        [150, 0],
        [-20, 0],
      ],
    ]);
    expect(lengthOf(other ?? [])).toBeCloseTo(70);
    const [, beside] = notTwice([
      [
        [0, 0],
        [100, 0],
      ],
      [
        [0, 10],
        [100, 10],
      ],
    ]);
    expect(lengthOf(beside ?? [])).toBeCloseTo(100);
  });

  test('a line of no length and one that goes back on itself draw nothing twice', () => {
    expect(
      notTwice([
        [
          [5, 5],
          [5, 5],
        ],
      ]),
    ).toEqual([[]]);
    const [back] = notTwice([
      [
        [0, 0],
        [100, 0],
        [40, 0],
      ],
    ]);
    expect(lengthOf(back ?? [])).toBeCloseTo(100);
  });
});

describe('the ways on a plan', () => {
  test('each end of the condensate has its mark, and the door one ring for both it stops', () => {
    const items = all.marks(K);
    const ends = answers.filter((a) => a.service === 'condensate');
    for (const state of ['stop', 'check'] as const)
      expect(marks(items, `finding:${state}`)).toHaveLength(ends.filter((a) => a.state === state).length);
    expect(ends.filter((a) => a.blocks.some((b) => b.ids.includes('dd3')))).toHaveLength(2);
    expect(marks(items, 'spot')).toHaveLength(1);
  });

  test('reached and not reached differ in beat and weight, not in ink alone', () => {
    const looks = new Set(
      all.ways.flatMap((i) =>
        i.t === 'line' && i.style.ink !== 'paper' ? [`${i.style.pen} ${i.style.dash.join(' ')}`] : [],
      ),
    );
    expect(looks.size).toBe(2);
  });

  test('what is looked at says what is in its way; the others stand back', () => {
    const key = reachKey({ appliance: 'NB', service: 'condensate', end: 'FG' });
    const one = reachDrawing(plan, VIEW, answers, { looked: key });
    const texts = one.marks(K).flatMap((i) => (i.t === 'text' ? [i.text] : []));
    expect(texts).toEqual([answers.find((a) => reachKey(a) === key)?.blocks[0]?.what]);
    expect(marks(one.marks(K), 'finding:stop')).toHaveLength(1);
    expect(one.ways.some((i) => i.t === 'line' && i.style.ink === 'ink3')).toBe(true);
  });

  test('words keep within what shows', () => {
    const key = reachKey({ appliance: 'NB', service: 'condensate', end: 'FG' });
    const one = reachDrawing(plan, VIEW, answers, { looked: key });
    const ring = marks(one.marks(K), 'spot')[0];
    if (!ring) throw new Error('no ring');
    const [x, y] = ring.at;
    const shows = (minX: number, maxX: number) => ({ minX, maxX, minY: y - 5000, maxY: y + 5000 });
    const side = (box: ReturnType<typeof shows>) =>
      one.marks(K, box).flatMap((i) => (i.t === 'text' ? [i.align, i.offsetMm?.[0] ?? 0] : []));
    expect(side(shows(x - 9000, x + 9000))[0]).toBe('left');
    expect(side(shows(x - 9000, x + 1000))[0]).toBe('right');
    expect(side(shows(x - 9000, x + 1000))[1]).toBeLessThan(0);
    const [, off] = side(shows(x - 2200, x + 600));
    expect((off as number) * K).toBeLessThanOrEqual(600);
  });

  test('no mark covers another, nor its own end, at any scale', () => {
    for (const k of [20, 60, 120]) {
      const boxes = all.taken(k);
      boxes.forEach((a, i) => {
        for (const b of boxes.slice(i + 1)) {
          const over = a.minX < b.maxX && b.minX < a.maxX && a.minY < b.maxY && b.minY < a.maxY;
          expect(over, `1:${k}`).toBe(false);
        }
      });
    }
  });

  test('relief is drawn only when it is looked at: two waters on one drawing are none', () => {
    const key = reachKey({ appliance: 'NB', service: 'boilerRelief', end: 'RG' });
    const one = reachDrawing(plan, VIEW, answers, { looked: key });
    const mark = one.marks(K).find((i) => i.t === 'mark' && i.mark === 'tee');
    expect(mark).toBeDefined();
    expect(all.marks(K).some((i) => i.t === 'mark' && i.mark === 'tee')).toBe(false);
  });

  test('nothing on a wall face, nor on a floor it has no part in', () => {
    const face = reachDrawing(plan, { kind: 'face', wall: 'DE', side: 'left' }, answers, { looked: null });
    expect([...face.ways, ...face.marks(K)]).toEqual([]);
    const up = reachDrawing(plan, { kind: 'plan', storey: 'first' }, answers, { looked: null });
    expect([...up.ways, ...up.marks(K)]).toEqual([]);
  });

  test('a floor on which ends stand shows how they stand, without the way', () => {
    const far = answers.map((a) => ({ ...a, storey: 'first' }));
    const one = reachDrawing(plan, VIEW, far, { looked: null });
    expect(one.ways).toEqual([]);
    expect(marks(one.marks(K), 'finding:stop').length).toBeGreaterThan(0);
  });

  test('a turned plan turns the ways with it', () => {
    const turned = reachDrawing(plan, { ...VIEW, turnDeg: 90 }, answers, { looked: null });
    const first = (items: readonly Item[]): Vec | undefined =>
      items.flatMap((i) => (i.t === 'line' ? [i.pts[0]] : []))[0];
    const [p, q] = [first(all.ways), first(turned.ways)];
    expect(q?.[0]).toBeCloseTo(-(p?.[1] ?? 0));
    expect(q?.[1]).toBeCloseTo(p?.[0] ?? 0);
  });

  test('in print every line is black and still told apart', () => {
    const items = [{ group: 'finding' as const, id: 'reach', items: [...all.ways, ...all.marks(K)] }];
    const box = { minX: 0, minY: 0, maxX: 9000, maxY: 17000 };
    const svg = writeSvg({ view: VIEW, box, items }, { scale: 50, theme: 'print', title: 'ways' });
    const inks = new Set([...svg.matchAll(/stroke="(#[0-9A-Fa-f]{6})"/g)].map((m) => m[1]?.toUpperCase()));
    expect([...inks].sort()).toEqual(['#000000', '#FFFFFF']);
    expect(new Set([...svg.matchAll(/stroke-dasharray="([^"]+)"/g)].map((m) => m[1])).size).toBeGreaterThan(1);
  });

  test('raising the boiler over the heads of the doors draws another map', () => {
    const high = bootRoom().plan;
    hang(high, 'NB', 2600);
    const there = reachIn(high);
    expect(there.find((a) => a.end === 'FG' && a.service === 'condensate')?.state).not.toBe('stop');
    expect(marks(reachDrawing(high, VIEW, there, { looked: null }).marks(K), 'spot')).toHaveLength(0);
  });
});
