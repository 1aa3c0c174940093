import { describe, expect, test } from 'vitest';
import { levelStretch } from '../../src/drawing/ribbon/level-stretch.ts';
import { longSection } from '../../src/drawing/ribbon/long-section.ts';
import { clearOf, passingPipes, sayClear } from '../../src/drawing/ribbon/passing.ts';
import { ribbonBars } from '../../src/drawing/ribbon/ribbon-bars.ts';
import { ribbon } from '../../src/drawing/ribbon.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { demo } from './demo.ts';
import { AFTER } from './small-plan.ts';

const plan = demo('flat');
const network = buildNetwork(plan, AFTER);
const bars = (at: { x: number; y: number } | null, run: string | null = null, leg: string | null = null) =>
  ribbonBars(plan, network, { storey: 'B', at, run, leg });

describe('bars of the ribbon', () => {
  test('each run is there once, by its level piece nearest to the place', () => {
    const kitchen = bars({ x: 800, y: 6200 });
    expect(new Set(kitchen.map((b) => b.run)).size).toBe(kitchen.length);
    const zs = kitchen.map((b) => b.z);
    expect([...zs].sort((a, b) => a - b)).toEqual(zs);
    const far = bars({ x: 8000, y: 500 });
    const gas = (list: typeof far) => list.find((b) => b.run === 'B-g1');
    expect(gas(far)?.leg).not.toBe(gas(kitchen)?.leg);
  });

  test('what comes by within an arm is here, what runs elsewhere says how far', () => {
    const here = bars({ x: 4000, y: 3950 }).find((b) => b.run === 'B-g1');
    expect([here?.here, here?.tag, here?.name]).toEqual([true, 'G 28', 'gas 28']);
    const away = bars({ x: 4000, y: 1000 }).find((b) => b.run === 'B-g1');
    expect(away?.here).toBe(false);
    expect(away?.awayMm).toBeCloseTo(2950, -2);
  });

  test('a chosen leg stands for its run wherever the place is', () => {
    const first = bars({ x: 8000, y: 500 }, 'B-g1').find((b) => b.chosen);
    const others = Object.values(plan.legs).filter((l) => l.run === 'B-g1' && l.id !== first?.leg);
    const level = others.find((l) => levelStretch(plan, l.id).length > 0);
    expect(bars({ x: 8000, y: 500 }, 'B-g1', level?.id).find((b) => b.chosen)?.leg).toBe(level?.id);
  });

  test('a pipe that falls has a height too, and says its fall; an assumed height says its bounds', () => {
    const drain = bars(null).find((b) => b.letters === 'K');
    expect(drain?.fallMm).toBe(45);
    const house = demo('two-storey');
    const net = buildNetwork(house, AFTER);
    const all = Object.keys(house.storeys).flatMap((storey) => ribbonBars(house, net, { storey, at: null, run: null }));
    for (const b of all.filter((one) => one.assumed)) {
      expect(b.assumed?.lo).toBeLessThanOrEqual(b.z);
      expect(b.assumed?.hi).toBeGreaterThanOrEqual(b.z);
    }
  });
});

describe('a height that nobody measured', () => {
  const named = Object.values(plan.nodes).filter((n) => n.place.on === 'storey');
  const cold = bars(null).find((b) => b.tag === 'C 22');
  const leg = plan.legs[cold?.leg ?? ''];
  const nodes = { ...plan.nodes };
  for (const n of named) {
    if (n.place.on !== 'storey' || (n.id !== leg?.a && n.id !== leg?.b)) continue;
    nodes[n.id] = {
      ...n,
      place: { ...n.place, height: { from: 'floor', of: 'B', mm: 400, assumed: { lo: 300, hi: 500 } } },
    };
  }
  const unsure = { ...plan, nodes };
  const net = buildNetwork(unsure, AFTER);
  const options = { storey: 'B', at: null, run: null, widthMm: 600, mmPerPaperMm: 17, levels: [] };

  test('is told with its bounds, and its figure is underlined with dots', () => {
    const drawn = ribbon(unsure, net, options);
    expect(drawn.bars.find((b) => b.run === cold?.run)?.assumed).toMatchObject({ lo: 300, hi: 500 });
    const dotted = drawn.list.items.flatMap((g) =>
      g.items.flatMap((i) => (i.t === 'text' && i.underline === 'dotted' ? [i.text] : [])),
    );
    expect(dotted).toEqual(['C 400']);
  });

  test('one that was measured has none', () => {
    const drawn = ribbon(plan, network, options);
    const dotted = drawn.list.items.flatMap((g) => g.items.filter((i) => i.t === 'text' && i.underline === 'dotted'));
    expect(dotted).toEqual([]);
  });
});

describe('what passes a pipe', () => {
  test('clear is between the outsides, and under nought they run into each other', () => {
    const p = { low: 189, high: 211 };
    expect(clearOf(250, 11, p)).toBe(28);
    expect(clearOf(150, 11, p)).toBe(28);
    expect(clearOf(205, 11, p)).toBeLessThan(0);
  });

  test('the nearest is said, with its side', () => {
    const pass = (name: string, z: number) => ({
      leg: name,
      run: name,
      name,
      service: 'cold',
      at: { x: 0, y: 0 },
      of: 'x',
      low: z - 11,
      high: z + 11,
    });
    const all = [pass('cold 22', 400), pass('heating flow 22', 210)];
    expect(sayClear(160, 11, all)).toBe('under the heating flow 22 by 28 clear');
    expect(sayClear(260, 11, all)).toBe('over the heating flow 22 by 28 clear');
    expect(sayClear(395, 11, all)).toBe('runs into the cold 22');
    expect(sayClear(160, 11, [])).toBeNull();
  });

  test('pipes joined to the piece, and those of its own run, do not pass it', () => {
    const leg = bars({ x: 4000, y: 3950 }).find((b) => b.run === 'B-g1')?.leg ?? '';
    const pieces = levelStretch(plan, leg);
    expect(pieces.length).toBeGreaterThan(1);
    const passing = passingPipes(plan, network, pieces);
    expect(passing.some((p) => p.run === 'B-g1')).toBe(false);
    const nodes = new Set(pieces.flatMap((p) => [p.leg.a, p.leg.b]));
    for (const p of passing) {
      const other = plan.legs[p.leg];
      expect(other && (nodes.has(other.a) || nodes.has(other.b))).toBe(false);
    }
  });
});

describe('the long section', () => {
  const drawn = longSection(plan, network, 'B-g1', {
    storey: 'B',
    left: 100,
    right: 1100,
    within: { minX: 0, maxX: 1200, minY: -400, maxY: 3000 },
    mmPerPaperMm: 17,
    pxMm: 5,
    chainZ: -300,
    floor: 0,
    ceiling: 2500,
  });
  const texts = drawn.items.flatMap((i) => (i.t === 'text' ? [i.text] : []));

  test('rises, levels and a chain of distances are written', () => {
    expect(texts).toContain('up 1920');
    expect(texts).toContain('2420');
    expect(texts).toContain('8100');
  });

  test('its level parts can be taken hold of, from the turn at one end to the turn at the other', () => {
    expect(drawn.parts).toHaveLength(1);
    expect(drawn.parts[0]?.z).toBe(2420);
    expect(drawn.parts[0]?.upTo).toBeCloseTo(1100);
    expect(plan.legs[drawn.parts[0]?.leg ?? '']?.run).toBe('B-g1');
  });

  test('it is told in order along it, with what it goes through', () => {
    const metres = drawn.told.map((t) => Number.parseFloat(t));
    expect([...metres].sort((a, b) => a - b)).toEqual(metres);
    expect(drawn.told[0]).toBe('0.0 m: up 1920 to 2420');
    expect(drawn.told.some((t) => /over a joist/.test(t))).toBe(true);
    expect(drawn.told.some((t) => /through 100 of block/.test(t))).toBe(true);
    expect(drawn.ground.some((i) => i.t === 'area' && i.fill === 'void')).toBe(true);
  });
});
