import { describe, expect, test } from 'vitest';
import { evaluate, give } from '../../../src/engine/evaluate.ts';
import { flueFacesOf } from '../../../src/engine/flue/flue-faces.ts';
import { flueRoutes } from '../../../src/engine/flue/flue-routes.ts';
import { besideWindow, fronted, house } from '../../../src/engine/rules/flue/houses.ts';
import { overhead, rising, route } from '../../../src/engine/rules/flue/routes.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { FlueDistance } from '../../../src/report/flue-face.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const faceOf = (plan: Plan) => flueFacesOf(give(plan, AFTER)).find((f) => f.terminal === 't');
const rowOf = (plan: Plan, row: string): FlueDistance | undefined => faceOf(plan)?.distances.find((d) => d.row === row);

describe('the outside of a terminal', () => {
  test('both ends of a distance lie as far apart as is found', () => {
    for (const d of faceOf(besideWindow(420).plan)?.distances ?? []) {
      const { from, to } = d;
      const apart = Math.hypot(from.x - to.x, from.y - to.y, from.z - to.z);
      expect(Math.abs(apart - (d.found.value ?? 0)), d.row).toBeLessThan(0.2);
    }
    expect(faceOf(besideWindow(420).plan)?.distances.length).toBeGreaterThan(1);
  });

  test('a window upstairs in the same face counts', () => {
    const e = fronted();
    e.plan.storeys.first = { ...(e.plan.storeys.ground as Plan['storeys'][string]), id: 'first', floorMm: 2650 };
    e.wall('up', [150, 150], [5850, 150], { storey: 'first', thicknessMm: 300 });
    e.opening('sill', 'up', 2500, 1000, { kind: 'window', sillMm: 100, headMm: 1200 });
    expect(rowOf(e.plan, 'below-opening')).toMatchObject({ state: 'pass', found: { value: 450 } });
  });

  test('a window round the corner is a check, never a stop', () => {
    const near = house()
      .point('flue-terminal', 't', [5750, 0, 2200])
      .opening('side', 'e', -50, 900, { kind: 'window', sillMm: 1000, headMm: 2300 }).plan;
    const found = faceOf(near)?.distances.find((d) => d.ids.includes('side'));
    expect(found).toMatchObject({ row: 'beside-opening', state: 'check' });
  });

  test('an opening between two rooms is none of its business', () => {
    const e = fronted().wall('p', [150, 2000], [5850, 2000], { thicknessMm: 100 });
    e.opening('inner', 'p', 2600, 900);
    expect(faceOf(e.plan)?.distances.some((d) => d.ids.includes('inner'))).toBe(false);
  });

  test('the corners of the house, from its edge', () => {
    const { plan } = house().point('flue-terminal', 't', [250, 0, 2200]);
    expect(rowOf(plan, 'beside-corner')).toMatchObject({ state: 'stop', found: { value: 200 } });
  });

  test('a wall shared with next door is no corner', () => {
    const { plan } = house().point('flue-terminal', 't', [250, 0, 2200]);
    (plan.walls.w as { party?: boolean }).party = true;
    expect(rowOf(plan, 'beside-corner')).toBeUndefined();
  });

  test('a boundary is faced however low its fence is', () => {
    const faced = fronted().point('boundary', 'by', [3000, -600, 0]).plan;
    expect(rowOf(faced, 'facing-boundary')).toMatchObject({ state: 'stop', found: { value: 500 } });
  });

  test('a boundary square to the wall runs beside it', () => {
    const { plan } = fronted().point('boundary', 'by', [3300, -1500, 0]);
    const place = plan.points.by?.place;
    if (place?.on === 'storey') place.angleDeg = 90;
    expect(rowOf(plan, 'beside-boundary')).toMatchObject({ state: 'stop' });
    expect(rowOf(plan, 'facing-boundary')).toBeUndefined();
  });

  test('the sheet of the appliance goes first', () => {
    const { plan } = fronted().point('boiler', 'b', [3000, 300, 1300]).point('gutter', 'gu', [3000, 0, 2340]);
    expect(rowOf(plan, 'below-gutter')).toMatchObject({ state: 'stop', wanted: { value: 75 } });
    const o = { id: 'o', limit: 'flue-below-gutter', scope: 'b', value: 25, unit: 'mm', note: '', page: '12' };
    plan.overrides = { o };
    expect(rowOf(plan, 'below-gutter')).toMatchObject({ state: 'pass', wanted: { value: 25 } });
    expect(rowOf(plan, 'below-gutter')?.say).toContain('page 12');
  });

  test('what was there before is told and not judged', () => {
    const { plan } = besideWindow(100, true, null);
    expect(rowOf(plan, 'beside-opening')?.state).toBe('note');
    expect(evaluate(plan, AFTER).findings.filter((f) => f.rule.startsWith('flue/'))).toEqual([]);
  });

  test('how high it is, by the levels, else as told with the doubt of where it was read', () => {
    expect(rowOf(fronted().plan, 'above-ground')?.found).toMatchObject({ lo: 2200, hi: 2200 });
    const { plan } = fronted({ aboveGroundMm: 2600 });
    delete plan.grounds.g;
    expect(rowOf(plan, 'above-ground')?.found).toMatchObject({ lo: 2550, hi: 2600 });
  });
});

describe('a flue that is drawn', () => {
  test('leads from its boiler to its terminal, with its bends', () => {
    const given = give(rising(220).plan, AFTER);
    const [found] = flueRoutes(given);
    expect(found).toMatchObject({ isNew: true, bends90: 1, bends45: 0 });
    expect([found?.appliance?.id, found?.terminal?.id]).toEqual(['b', 't']);
    expect(faceOf(rising(220).plan)?.appliance).toBe('b');
  });

  test('a boiler without one has nothing said of its flue tail', () => {
    const { plan } = house().point('boiler', 'b', [3000, 300, 1300]).point('flue-terminal', 't', [3000, 0, 2200]);
    const { findings } = evaluate(plan, AFTER);
    expect(findings.filter((f) => /flue/i.test(f.title))).toEqual([]);
  });

  test('is listed as lengths, elbows and brackets, without couplers, clips and sleeves', () => {
    const { plan } = rising(220).wall('w', [3000, -1000], [3000, 1000], { heightMm: 3000 });
    const lines = evaluate(plan, AFTER).lines.map((l) => l.name);
    expect(lines.sort()).toEqual(['flue bracket', 'flue elbow', 'flue pipe']);
  });

  test('through a joist is a hole like any other, and too large', () => {
    const { plan } = route([[0, -150, 2180]]);
    plan.voids.v = overhead({
      bottom: { from: 'datum', of: null, mm: 2100 },
      top: { from: 'datum', of: null, mm: 2600 },
      joists: {
        kind: 'solid',
        wayDeg: 90,
        centresMm: 400,
        first: { x: 200, y: 0 },
        depthMm: 195,
        breadthMm: 47,
        bottom: { from: 'datum', of: null, mm: 2200 },
        spanMm: 2000,
        exceptions: [],
      },
    });
    const found = evaluate(plan, AFTER).findings.find((f) => f.rule === 'structure/joists');
    expect(found?.outcome).toBe('stop');
  });

  test('the section answers with the nearest, or with its stops', () => {
    const section = (plan: Plan) => evaluate(plan, AFTER).sections.find((s) => s.id === 'flue');
    expect(section(besideWindow(420).plan)).toMatchObject({ state: 'pass', answer: '420 mm, 300 wanted' });
    expect(section(besideWindow(100).plan)).toMatchObject({ state: 'stop', answer: '1 stop' });
    expect(section(house().plan)).toBeUndefined();
  });
});
