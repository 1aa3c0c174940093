import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Selected } from '../../src/editor/editor-api.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Report } from '../../src/report/report.ts';
import { sayThing } from '../../src/view/a11y/say-thing.ts';
import { sectionsOf } from '../../src/view/panels/about-chosen.ts';
import { chaptersOf, openChapterOf, shownFirst } from '../../src/view/panels/chapters.ts';
import { nameOf } from '../../src/view/panels/name-of.ts';
import { runSums } from '../../src/view/panels/runs-chapter.tsx';
import { selectedOf } from '../../src/view/panels/show-ids.ts';
import { groupsOf } from '../../src/view/panels/things/things-of.ts';
import { heightAt, sayHeight, storeyHeights } from '../../src/view/ribbon/levels.ts';
import { fitScale } from '../../src/view/ribbon/ribbon-scale.ts';
import { casesOf } from '../../src/view/strip/cases.ts';
import { sketchOf } from '../../src/view/words/sketch-shape.ts';

function flat(): Plan {
  const read = readPlan(readFileSync(new URL('../../demo-plans/flat.plan.json', import.meta.url), 'utf8'));
  if (read.kind !== 'ok') throw new Error(read.sentence);
  return read.plan;
}
const plan = flat();

/** What the list shows in one case or another. */
const thingsOf = () => casesOf(plan).flatMap(({ chosen }) => groupsOf(plan, chosen).flatMap((g) => [...g.things]));

describe('what things are called', () => {
  test('by their own name, else by their kind; never by an id', () => {
    expect(nameOf(plan, { map: 'rooms', id: 'lounge' })).toBe('Lounge');
    expect(nameOf(plan, { map: 'legs', id: 'B-g1-1' })).toBe('Gas leg, 28');
    expect(nameOf(plan, { map: 'walls', id: 'BW' })).toBe('Wall, 250');
    expect(nameOf(plan, { map: 'points', id: 'gone' })).toBe('Point');
  });

  test('the list beside the drawing has every point, run, room, void, opening, wall, roof and ground once', () => {
    const things = thingsOf();
    const wanted = (
      ['points', 'runs', 'items', 'rooms', 'voids', 'openings', 'walls', 'roofs', 'grounds'] as const
    ).flatMap((map) => Object.keys(plan[map]).map((id) => `${map} ${id}`));
    expect([...new Set(things.map((t) => `${t.map} ${t.id}`))].sort()).toEqual(wanted.sort());
    for (const chosen of casesOf(plan).map((c) => c.chosen)) {
      const ids = groupsOf(plan, chosen).flatMap((g) => g.things.map((t) => t.id));
      expect(new Set(ids).size).toBe(ids.length);
    }
    expect(things.every((t) => t.name !== '')).toBe(true);
  });

  test('a point says its height and what was told of it', () => {
    expect(sayThing(plan, { map: 'points', id: 'B-NB' })).toMatch(/^1300 off floor; .*gas/);
    expect(sayThing(plan, { map: 'runs', id: 'B-g1' })).toMatch(/^4 legs, 28$/);
  });

  test('nothing is said that the name has said: a room tells its size, a void its joists', () => {
    const lounge = sayThing(plan, { map: 'rooms', id: 'lounge' });
    expect(lounge).toMatch(/(^|, )\d+\.\d m²$/);
    for (const { map, id, name } of thingsOf()) {
      const said = sayThing(plan, { map, id }).toLowerCase();
      expect(said === '' ? '' : said.split(', ')[0], `${map} ${id}`).not.toBe(name.toLowerCase());
    }
  });
});

describe('what is chosen brings its sum forward', () => {
  test('the section that answers for a pipe, a valve on it or an appliance', () => {
    expect([...sectionsOf(plan, [{ map: 'runs', id: 'B-g1' }])]).toEqual(['gas-drop']);
    expect([...sectionsOf(plan, [{ map: 'legs', id: 'B-g1-1' }])]).toEqual(['gas-drop']);
    expect([...sectionsOf(plan, [{ map: 'points', id: 'B-NB' }])]).toEqual(
      expect.arrayContaining(['gas-drop', 'condensate']),
    );
    const onGas = Object.values(plan.items).find((i) =>
      Object.values(plan.legs).some((l) => (l.a === i.node || l.b === i.node) && plan.runs[l.run]?.service === 'gas'),
    );
    if (onGas) expect(sectionsOf(plan, [{ map: 'items', id: onGas.id }]).has('gas-drop')).toBe(true);
    expect([...sectionsOf(plan, [{ map: 'walls', id: 'BW' }])]).toEqual([]);
  });

  test('its row stands in the foot of the panel even where it passes and others do not', () => {
    const section = (id: string, state: 'pass' | 'check') => ({ id, title: id, order: 1, state, answer: id, rows: [] });
    const sections = [section('gas-drop', 'pass'), ...['a', 'b', 'c', 'd', 'e'].map((id) => section(id, 'check'))];
    const report = { sections, counts: { stop: 0, check: 5, note: 0, cantTell: 0 }, lines: [] } as unknown as Report;
    const shown = (selection: readonly Selected[]) => shownFirst(chaptersOf({ plan, selection }, report), 6);
    expect(shown([]).has('section:gas-drop')).toBe(false);
    expect(shown([{ map: 'legs', id: 'B-g1-1' }]).has('section:gas-drop')).toBe(true);
  });
});

describe('chapters of the panel', () => {
  const state = { plan, selection: [] };
  test('without a report and with nothing chosen, the things stand open', () => {
    const chapters = chaptersOf(state, null);
    expect(chapters.map((c) => c.id)).toEqual(['findings', 'list', 'runs', 'things', 'traces', 'options', 'job']);
    expect(openChapterOf(chapters, null)?.id).toBe('things');
    expect(openChapterOf(chapters, 'section:gone')?.id).toBe('things');
  });
  test('what is chosen comes first and stands open until another is asked for', () => {
    const chapters = chaptersOf({ plan, selection: [{ map: 'rooms', id: 'lounge' }] }, null);
    expect(chapters[0]).toMatchObject({ id: 'inspect', title: 'Lounge' });
    expect(openChapterOf(chapters, null)?.id).toBe('inspect');
    expect(openChapterOf(chapters, 'runs')?.id).toBe('runs');
  });
});

describe('heights', () => {
  test('the work height is caught by a level near it, else set off the floor in tens', () => {
    const heights = storeyHeights(plan, 'B');
    expect(heights).toMatchObject({ floor: 0, ceiling: 2500, buildUpMm: 220 });
    const levels = [{ z: 2500, label: 'ceiling', height: { from: 'ceiling', of: 'B', mm: 0 } as const }];
    expect(heightAt(levels, 'B', 0, 2480, 30)).toEqual({ from: 'ceiling', of: 'B', mm: 0 });
    expect(heightAt(levels, 'B', 0, 2463, 30)).toEqual({ from: 'floor', of: 'B', mm: 2460 });
    expect(heightAt(levels, 'B', 0, 2480, 0)).toEqual({ from: 'floor', of: 'B', mm: 2480 });
  });
  test('are said by what they are taken from', () => {
    expect(sayHeight(plan, { from: 'floor', of: 'B', mm: 150 })).toBe('150 off floor');
    expect(sayHeight(plan, { from: 'ceiling', of: 'B', mm: -80 })).toBe('80 below ceiling');
    expect(sayHeight(plan, { from: 'voidBottom', of: 'BV1', mm: 0 })).toBe('bottom of Hall false ceiling');
  });
  test('the ribbon shows all of a storey within its margins', () => {
    const scale = fitScale(-220, 2720, 700, 20);
    expect(scale.y(2720)).toBeCloseTo(20);
    expect(scale.y(-220)).toBeCloseTo(680);
    expect(scale.z(scale.y(1234))).toBeCloseTo(1234);
  });
});

test('a run is summed from the facts of its own legs', () => {
  const facts = { fittings: [], equivalentM: null, dropMbar: null, flowM3PerH: null };
  const sums = runSums(plan, [
    { leg: 'B-g1-1', run: 'B-g1', lengthMm: { lo: 1000, hi: 1100 }, ...facts },
    { leg: 'B-g1-2', run: 'B-g1', lengthMm: { lo: 500, hi: 500 }, ...facts },
  ]);
  expect(sums.find((s) => s.id === 'B-g1')).toMatchObject({ lo: 1500, hi: 1600, sizes: ['28'] });
  expect(sums).toHaveLength(Object.keys(plan.runs).length);
});

test('ids of a row choose records, and ids of nothing choose nothing', () => {
  expect(selectedOf(plan, ['B-g1', 'B-NB', 'nowhere'])).toEqual([
    { map: 'runs', id: 'B-g1' },
    { map: 'points', id: 'B-NB' },
  ]);
});

test('cases: before the work, then each option after it', () => {
  expect(casesOf(plan).map((c) => c.label)).toEqual(['Before', 'After, A']);
});

describe('the sketch of a run', () => {
  const box = { width: 340, height: 127, margin: 26 };
  const sketch = (turn: number) => sketchOf(plan, 'B-g1', turn, box.width, box.height, box.margin);

  test('stays in its box however it is turned, with the length of every level leg', () => {
    for (const turn of [-35, 0, 60, 145, 290]) {
      const shape = sketch(turn);
      expect(shape?.lines).toHaveLength(4);
      for (const [x, y] of shape?.lines.flatMap((l) => [l.a, l.b]) ?? []) {
        expect(x).toBeGreaterThanOrEqual(box.margin - 0.01);
        expect(x).toBeLessThanOrEqual(box.width - box.margin + 0.01);
        expect(y).toBeGreaterThanOrEqual(box.margin - 0.01);
        expect(y).toBeLessThanOrEqual(box.height - box.margin + 0.01);
      }
      expect(shape?.lines.map((l) => l.say).filter((s) => s !== '')).toContain('8100');
    }
  });
  test('is nothing for a run that is not there', () => {
    expect(sketchOf(plan, 'gone', 0, 340, 127, 26)).toBeNull();
  });
});

describe('the chapters shown first', () => {
  const chapter = (id: string, rank: number) => ({ id, title: id, answer: '', rank });

  test('all of them where there is room', () => {
    expect([...shownFirst([chapter('a', 1), chapter('b', 2)], 2)]).toEqual(['a', 'b']);
  });

  test('else those that want it most, one place left for the key to the others', () => {
    const many = [chapter('a', 1), chapter('b', 60), chapter('c', 1), chapter('d', 50), chapter('e', 45)];
    expect([...shownFirst(many, 4)].sort()).toEqual(['b', 'd', 'e']);
  });
});
