import { describe, expect, test } from 'vitest';
import type { Item, TextItem } from '../../src/drawing/display-list.ts';
import { distanceAt, distanceItems } from '../../src/drawing/flue-face/distance-items.ts';
import { elevationOf, tracedFaces } from '../../src/drawing/flue-face/elevation.ts';
import { roofLines } from '../../src/drawing/flue-face/elevation-building.ts';
import { paneItems } from '../../src/drawing/flue-face/elevation-opening.ts';
import {
  type FlueFaceDrawing,
  flueFaceDrawing,
  isDrawnFor,
  layFigures,
} from '../../src/drawing/flue-face/flue-face-drawing.ts';
import { facesWorstFirst, isUnverified, worstFirst } from '../../src/drawing/flue-face/worst-first.ts';
import { overlap } from '../../src/drawing/labels/paper.ts';
import { aliveIn } from '../../src/network/cases.ts';
import type { FlueFace } from '../../src/report/flue-face.ts';
import { between } from '../../src/report/quantity.ts';
import { demo } from './demo.ts';
import { distance, eastGable, GABLE } from './flue-face-fixture.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const semi = demo('semi');

function drawn(face: FlueFace, plan = semi): FlueFaceDrawing {
  const found = flueFaceDrawing(plan, AFTER, face);
  if (!found) throw new Error('nothing is drawn');
  return found;
}

const texts = (items: readonly Item[]): TextItem[] => items.filter((i): i is TextItem => i.t === 'text');

describe('the elevation', () => {
  const elevation = elevationOf(semi, eastGable([]), aliveIn(semi, AFTER));
  if (!elevation) throw new Error('no elevation');

  test('walls in line on every storey, seen from outside', () => {
    expect(elevation.walls.map((w) => [w.id, w.side]).sort()).toEqual([
      ['FE', 'right'],
      ['GE', 'right'],
    ]);
    expect(elevation.out).toEqual({ x: 1, y: -0 });
    expect(elevation.upTo - elevation.from).toBeCloseTo(7200, 3);
    // Whoever looks at an east wall has the north to the right.
    expect(elevation.at({ x: 8400, y: 5250, z: 4850 })[0]).toBeGreaterThan(elevation.at({ x: 8400, y: 900, z: 0 })[0]);
    expect(elevation.depth({ x: 9450, y: 5250, z: 0 })).toBeCloseTo(1050, 3);
    expect(elevation.inPlan(elevation.at({ x: 8400, y: 5250, z: 0 })[0], 0)).toEqual({ x: 8400, y: 5250 });
  });

  test('a wall set back by more than it is thick is not in line', () => {
    const wall = semi.walls.GE;
    if (!wall) throw new Error('no wall');
    const by = (mm: number) => ({
      ...semi,
      walls: { ...semi.walls, GE: { ...wall, a: { ...wall.a, x: wall.a.x - mm }, b: { ...wall.b, x: wall.b.x - mm } } },
    });
    const ids = (mm: number) => elevationOf(by(mm), eastGable([]), aliveIn(semi, AFTER))?.walls.map((w) => w.id);
    expect(ids(290)).toContain('GE');
    expect(ids(310)).not.toContain('GE');
  });

  test('both slopes of the gable meet at the ridge', () => {
    const lines = roofLines(semi, elevation);
    expect(lines).toHaveLength(2);
    const ridge = Math.max(...lines.flat().map((p) => p[1]));
    expect(ridge).toBeCloseTo(5040 + 3600 * Math.tan((35 * Math.PI) / 180), 0);
  });

  test('pictures of every wall in line are shifted to it', () => {
    expect(tracedFaces(semi, elevation).map((t) => [t.on, Math.round(t.across)])).toEqual(
      expect.arrayContaining([
        ['FE:right', 0],
        ['GE:right', 0],
      ]),
    );
  });

  test('a terminal through the roof is seen before the whole house', () => {
    const face: FlueFace = { ...eastGable([]), wall: null, side: null, at: { x: 4000, y: 3000, z: 8000 } };
    const roof = elevationOf(semi, face, aliveIn(semi, AFTER));
    expect(roof?.walls.length).toBeGreaterThan(6);
    expect(flueFaceDrawing({ ...semi, walls: {} }, AFTER, face)).toBeUndefined();
  });

  test('a wall that is gone leaves nothing to look at', () => {
    expect(flueFaceDrawing(semi, AFTER, { ...eastGable([]), wall: 'gone' })).toBeUndefined();
  });
});

describe('openings', () => {
  const pane = { from: 0, upTo: 1200, low: 900, high: 2100 } as const;
  const dashed = (items: readonly Item[]) => items.filter((i) => i.t === 'line' && i.style.dash.length > 0);

  test('dashed lines meet where it is hung', () => {
    const [line] = dashed(paneItems({ ...pane, opens: true, hung: 'left' }, true, false));
    expect(line?.t === 'line' && line.pts[1]?.[0]).toBeLessThan(100);
    const [right] = dashed(paneItems({ ...pane, opens: true, hung: 'right' }, true, false));
    expect(right?.t === 'line' && right.pts[1]?.[0]).toBeGreaterThan(1100);
  });

  test('a fixed one is plain, one nobody looked at has a question mark', () => {
    const fixed = paneItems({ ...pane, opens: false, hung: 'top' }, true, false);
    expect(dashed(fixed)).toEqual([]);
    expect(texts(fixed)).toEqual([]);
    const unknown = paneItems({ ...pane, opens: null, hung: 'top' }, true, false);
    expect(dashed(unknown)).toEqual([]);
    expect(texts(unknown).map((t) => t.text)).toEqual(['?']);
  });

  test('over a picture nothing is filled', () => {
    const fills = paneItems({ ...pane, opens: true, hung: 'top' }, true, true).flatMap((i) =>
      i.t === 'area' ? [i.fill] : [],
    );
    expect(new Set(fills)).toEqual(new Set(['none']));
  });
});

describe('distances', () => {
  test('the worst first, and the same in whatever order they come', () => {
    const order = worstFirst(eastGable(GABLE)).map((d) => d.distance.row);
    expect(order.slice(0, 2)).toEqual(['eaves', 'opening-facing']);
    expect(order.at(-1)).toBe('meter');
    expect(worstFirst(eastGable([...GABLE].reverse())).map((d) => d.distance.row)).toEqual(order);
    expect(facesWorstFirst([{ ...eastGable([]), state: 'pass', terminal: 'p' }, eastGable([])])[0]?.terminal).toBe(
      'A-NF',
    );
  });

  test('a figure from memory is unverified', () => {
    const [d] = GABLE;
    expect(d && isUnverified(d)).toBe(true);
    expect(isUnverified(distance({ row: 'x', from: [0, 0, 0], to: [1, 0, 0], found: 1, wanted: null }))).toBe(false);
  });

  test.each([12, 25, 40, 70, 110])('no figure lies on another at 1 to %i', (scale) => {
    const { laid } = layFigures(drawn(eastGable(GABLE)), scale, null);
    expect(laid).toHaveLength(GABLE.length);
    laid.forEach((p, i) => {
      for (const q of laid.slice(i + 1)) expect(overlap(p.box, q.box), `${p.key} on ${q.key}`).toBe(false);
    });
  });

  test('a crowd on one side is laid in lanes', () => {
    const crowd = Array.from({ length: 8 }, (_, i) =>
      distance({ row: `side-${i}`, from: [8400, 5300, 4850], to: [8400, 5700 + i * 60, 4850], found: 400 + i * 60 }),
    );
    const { laid } = layFigures(drawn(eastGable(crowd)), 40, null);
    expect(new Set(laid.map((l) => Math.round(l.feet[0][1]))).size).toBe(8);
    laid.forEach((p, i) => {
      for (const q of laid.slice(i + 1)) expect(overlap(p.box, q.box), `${p.key} on ${q.key}`).toBe(false);
    });
  });

  test('laid the same every time', () => {
    const once = layFigures(drawn(eastGable(GABLE)), 33, null);
    expect(layFigures(drawn(eastGable([...GABLE].reverse())), 33, null)).toEqual(once);
  });

  test('measured along the way its figure is of', () => {
    const of = (found: number) =>
      layFigures(
        drawn(eastGable([distance({ row: 'x', from: [8400, 5300, 4850], to: [8400, 6300, 3850], found })])),
        40,
        null,
      ).laid[0]?.turnDeg;
    expect(of(1000)).toBe(0);
    expect(of(1414)).toBeCloseTo(-45, 0);
  });

  test('one that stops has its mark and a heavier line; one that passes has neither', () => {
    const { laid } = layFigures(drawn(eastGable(GABLE)), 40, null);
    const items = (row: string): readonly Item[] => {
      const found = laid.find((l) => l.distance.row === row);
      return found ? distanceItems(found, 40, false) : [];
    };
    const pens = (row: string): number => Math.max(...items(row).flatMap((i) => (i.t === 'line' ? [i.style.pen] : [])));
    const marks = (row: string) =>
      items(row).flatMap((i) => (i.t === 'mark' && i.mark.startsWith('finding') ? [i.mark] : []));
    expect(marks('eaves')).toEqual(['finding:stop']);
    expect(marks('corner')).toEqual([]);
    expect(marks('opening-facing')).toEqual(['finding:cantTell']);
    expect(pens('eaves')).toBeGreaterThan(2 * pens('corner'));
    expect(texts(items('eaves')).map((t) => [t.text, t.weight])).toEqual([
      ['140', 600],
      ['wanted 200', 400],
    ]);
  });

  test('a figure in doubt is a range, one without an upper end says so', () => {
    const face = eastGable([
      distance({ row: 'a', from: [8400, 5300, 4850], to: [8400, 7200, 4850], found: between(1800, 2000, 'mm', 0) }),
      distance({ row: 'b', from: [8400, 5200, 4850], to: [8400, 300, 4850], found: between(4000, null, 'mm', 0) }),
    ]);
    const said = texts(layFigures(drawn(face), 40, null).items).map((t) => t.text);
    expect(said).toContain('1800 to 2000');
    expect(said).toContain('at least 4000');
  });

  test('two wants between the same places share a line', () => {
    const ends = { from: [8400, 5300, 4850], to: [8400, 7200, 4850] } as const;
    const face = eastGable([
      distance({ row: 'a', ...ends, found: 1900, wanted: 300 }),
      distance({ row: 'b', ...ends, found: 1900, wanted: 2500, state: 'note' }),
    ]);
    const drawing = drawn(face);
    expect(drawing.distances).toHaveLength(1);
    const [only] = drawing.distances;
    expect(only?.distance.row).toBe('b');
    for (const d of worstFirst(face)) expect(only && isDrawnFor(only, d.key)).toBe(true);
    expect(texts(layFigures(drawing, 40, null).items).map((t) => t.text)).toContain('wanted 2500 and 300');
  });

  test('a tap finds the line under it and nothing where there is none', () => {
    const { laid } = layFigures(drawn(eastGable(GABLE)), 40, null);
    for (const l of laid) {
      const middle = [(l.box.minX + l.box.maxX) / 2, (l.box.minY + l.box.maxY) / 2] as const;
      expect(distanceAt(laid, middle, 3)).toBe(l.key);
    }
    expect(distanceAt(laid, [-900, -900], 6)).toBeNull();
  });
});

describe('the drawing', () => {
  test('what goes out from the wall is drawn from above, under the elevation', () => {
    const drawing = drawn(eastGable(GABLE));
    const plain = drawn(eastGable(GABLE.filter((d) => d.shows === 'face')));
    expect(drawing.box.minY).toBeLessThan(plain.box.minY - 2000);
    const boundary = drawing.distances.find((d) => d.distance.row === 'boundary-facing');
    // Straight out of the wall, straight down on the strip; as long as it is.
    expect(boundary?.a[0]).toBeCloseTo(boundary?.b[0] ?? 0, 3);
    expect((boundary?.a[1] ?? 0) - (boundary?.b[1] ?? 0)).toBeCloseTo(950, 3);
    expect(texts(layFigures(drawing, 40, null).items).map((t) => t.text)).toContain('from above');
    expect(texts(layFigures(plain, 40, null).items).map((t) => t.text)).not.toContain('from above');
  });

  test('what stands on the face is named', () => {
    const said = texts(layFigures(drawn(eastGable(GABLE)), 40, null).items).map((t) => t.text);
    for (const name of ['New flue terminal', 'Side door', 'First floor 2640', 'ground 0']) expect(said).toContain(name);
  });

  test('nothing near leaves the house and the terminal', () => {
    const { items, laid } = layFigures(drawn(eastGable([])), 40, null);
    expect(laid).toEqual([]);
    expect(texts(items).map((t) => t.text)).toContain('New flue terminal');
  });

  test('before the work the new terminal is on no face of its own', () => {
    const before = flueFaceDrawing(
      semi,
      { option: 'A', when: 'before' },
      { ...eastGable([]), terminal: 'A-EF', wall: 'GN', side: 'left' },
    );
    expect(texts(layFigures(before as FlueFaceDrawing, 40, null).items).map((t) => t.text)).not.toContain(
      'New flue terminal',
    );
  });
});
