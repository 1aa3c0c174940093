import { describe, expect, test } from 'vitest';
import type { Item } from '../../src/drawing/display-list.ts';
import { TEXT_MM } from '../../src/drawing/look/tokens.ts';
import { ribbon } from '../../src/drawing/ribbon.ts';
import { textWidth } from '../../src/drawing/text/measure.ts';
import { resolveHeight } from '../../src/geometry/heights.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { demo } from './demo.ts';
import { AFTER, page } from './small-plan.ts';

const plan = demo('flat');
const network = buildNetwork(plan, AFTER);
const options = {
  storey: 'B',
  at: { x: 4000, y: 3500 },
  run: 'B-g1',
  widthMm: 600,
  mmPerPaperMm: 17,
  levels: [{ label: 'worktop', height: { from: 'floor', of: 'B', mm: 900 } as const }],
};

describe('the heights ribbon', () => {
  const drawn = ribbon(plan, network, options);
  const items = (id: string): readonly Item[] => drawn.list.items.find((g) => g.id === id)?.items ?? [];
  const words = items('levels').flatMap((i) => (i.t === 'text' ? [i.text] : []));

  test('slabs, ceiling and void lie at their true heights', () => {
    const areas = items('section').flatMap((i) =>
      i.t === 'area' ? [[i.fill, i.rings[0]?.[0]?.[1], i.rings[0]?.[2]?.[1]]] : [],
    );
    expect(areas).toContainEqual(['slab', -220, 0]);
    expect(areas).toContainEqual(['slab', 2500, 2720]);
    expect(areas).toContainEqual(['void', 2250, 2500]);
    expect(areas.filter(([fill, low]) => fill === 'paper' && low === 2263)).toHaveLength(3);
  });

  test('the chosen run is unrolled from its source: every rise shows, along it is distance', () => {
    const legs = items('B-g1').flatMap((i) => (i.t === 'line' ? [i.pts] : []));
    expect(legs[0]?.map((p) => Math.round(p[1]))).toEqual([500, 2420]);
    expect(legs[0]?.[0]?.[0]).toBeCloseTo(legs[0]?.[1]?.[0] ?? 0);
    const ends = legs.map((pts) => pts[1]?.[0] ?? 0);
    expect([...ends].sort((a, b) => a - b)).toEqual(ends);
    expect(ends.at(-1)).toBeCloseTo(600 * 0.88);
  });

  test('other runs are short bars, named together where they are near', () => {
    expect(words).toContain('C 400');
    expect(words.some((w) => /^H, HR|^HR, HF|^H, HR, HF/.test(w))).toBe(true);
    expect(words).toContain('2420');
  });

  test('what can be tapped, lowest first, each with the reference that gives its height', () => {
    expect(drawn.levels.map((l) => [l.label, l.z])).toEqual([
      ['floor', 0],
      ['Gas meter and emergency control, outlet', 500],
      ['worktop', 900],
      ['under Hall false ceiling', 2250],
      ['in Hall false ceiling', 2375],
      ['ceiling', 2500],
      ['top of Hall false ceiling', 2500],
    ]);
    for (const level of drawn.levels) expect(resolveHeight(plan, level.height)?.z).toBe(level.z);
  });

  test('a void nobody named is called by its kind', () => {
    const [id, hall] = Object.entries(plan.voids).find(([, v]) => v.name === 'Hall false ceiling') ?? [];
    if (id === undefined || !hall) throw new Error('no void');
    const nameless = { ...plan, voids: { ...plan.voids, [id]: { ...hall, name: '' } } };
    const said = ribbon(nameless, buildNetwork(nameless, AFTER), options).levels.map((l) => l.label);
    expect(said).toContain('in ceiling void');
    expect(said).toContain('top of ceiling void');
  });

  test('away from the void there is none of it', () => {
    const kitchen = ribbon(plan, network, { ...options, at: { x: 1500, y: 5500 } });
    const section = kitchen.list.items.find((g) => g.id === 'section')?.items ?? [];
    expect(section.some((i) => i.t === 'area' && i.fill === 'void')).toBe(false);
  });

  test('labels keep a line apart', () => {
    const zs = items('levels').flatMap((i) => (i.t === 'text' ? [i.at[1]] : []));
    zs.slice(1).forEach((z, i) => {
      expect(z - (zs[i] ?? 0)).toBeGreaterThanOrEqual(3.4 * 17);
    });
  });

  test('an empty page has a floor and a ceiling; a storey that is gone has nothing', () => {
    const empty = page();
    const bare = ribbon(empty, buildNetwork(empty, AFTER), {
      ...options,
      storey: 'S',
      run: null,
      at: null,
      levels: [],
    });
    expect(bare.levels.map((l) => l.label)).toEqual(['floor', 'ceiling']);
    expect(ribbon(empty, buildNetwork(empty, AFTER), { ...options, storey: 'gone' }).levels).toEqual([]);
  });

  test('with little room a label says less, and none is longer than the room', () => {
    const texts = (labelRoomMm: number): string[] =>
      ribbon(plan, network, { ...options, labelRoomMm, mmPerPaperMm: 40 }).list.items.flatMap((g) =>
        g.id === 'levels' ? g.items.flatMap((i) => (i.t === 'text' ? [i.text] : [])) : [],
      );
    const size = TEXT_MM.screen.dimension;
    for (const text of texts(11)) expect(textWidth(text, size, 400)).toBeLessThan(11);
    expect(texts(11).some((t) => /^[A-Z]+ \+\d$/.test(t))).toBe(true);
    expect(texts(60).some((t) => t.includes('+'))).toBe(false);
  });
});
