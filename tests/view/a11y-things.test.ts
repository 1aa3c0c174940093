import { describe, expect, test } from 'vitest';
import '../../src/editor/later/later.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { AT_ONCE, MANY, rowsOf, unfoldedTo } from '../../src/view/panels/things/listed-rows.ts';
import { found, groupsOf, placeOf, wordsOf } from '../../src/view/panels/things/things-of.ts';
import { drawn } from '../editor/drawn.ts';

const closed = { open: new Map<string, boolean>(), shown: new Map<string, number>() };

describe('the list of things', () => {
  test('mirrors what stands in the case, by floor and kind', () => {
    const { editor, id } = drawn();
    const { plan, chosen } = editor.store.getState();
    const groups = groupsOf(plan, chosen);
    expect(groups.map((g) => g.title)).toEqual(['Points', 'Runs', 'Rooms', 'Openings', 'Walls']);
    expect(groups[1]?.things.map((t) => t.id).sort()).toEqual([id.gas, id.cold].sort());
    const before = groupsOf(plan, { option: chosen.option, when: 'before' });
    expect(before.flatMap((g) => g.things).some((t) => t.id === id.gas)).toBe(false);
  });

  test('says the floor where there are two', () => {
    const { editor } = drawn();
    editor.run('storey.add', { name: 'First floor', floorMm: 2650, ceilingMm: 2400, buildUpMm: 250 });
    const { plan, chosen } = editor.store.getState();
    const upper = Object.keys(plan.storeys).find((s) => s !== 'ground');
    expect(upper).toBeDefined();
    const place = { on: 'storey', x: 10, y: 10, angleDeg: 0 };
    editor.run('point.add', { kind: 'boiler', storey: upper, place });
    const titles = groupsOf(editor.store.getState().plan, chosen).map((g) => g.title);
    expect(titles.some((t) => /: points$/.test(t))).toBe(true);
    expect(titles.filter((t) => /: points$/.test(t))).toHaveLength(2);
  });

  test('a thing is found by name, service, size and room, all words together', () => {
    const { editor, id } = drawn();
    const { plan, chosen } = editor.store.getState();
    const groups = groupsOf(plan, chosen);
    const ids = (typed: string) => found(groups, typed, wordsOf(plan)).flatMap((g) => g.things.map((t) => t.id));
    expect(ids('gas 22')).toContain(id.gas);
    expect(ids('gas 22')).not.toContain(id.cold);
    expect(ids('meter')).toContain(id.meter);
    expect(ids('KITCHEN meter')).toEqual([id.meter]);
    expect(ids('no such thing')).toEqual([]);
    expect(ids('  ')).toHaveLength(groups.reduce((n, g) => n + g.things.length, 0));
  });

  test('everything listed has a place to be shown at', () => {
    const { editor } = drawn();
    const { plan, chosen } = editor.store.getState();
    for (const thing of groupsOf(plan, chosen).flatMap((g) => g.things)) expect(placeOf(plan, thing)).not.toBeNull();
  });
});

function manyRuns(n: number): Plan {
  const { editor, id } = drawn();
  const { plan } = editor.store.getState();
  const run = plan.runs[id.gas!]!;
  const leg = Object.values(plan.legs).find((l) => l.run === id.gas)!;
  const runs = { ...plan.runs };
  const legs = { ...plan.legs };
  for (let i = 0; i < n; i++) {
    runs[`r${i}`] = { ...run, id: `r${i}`, name: `Run ${i}` } as typeof run;
    legs[`l${i}`] = { ...leg, id: `l${i}`, run: `r${i}` } as typeof leg;
  }
  return { ...plan, runs, legs } as Plan;
}

describe('a thousand runs', () => {
  const plan = manyRuns(1000);
  const chosen = { option: 'A', when: 'after' } as const;
  const groups = groupsOf(plan, chosen);
  const runs = groups.find((g) => g.title === 'Runs')!;

  test('are folded, and unfolded only so many at once', () => {
    expect(runs.things.length).toBeGreaterThan(MANY);
    const rows = rowsOf(groups, closed, false);
    expect(rows.filter((r) => r.is === 'thing').length).toBeLessThan(MANY);
    const open = rowsOf(groups, { ...closed, open: new Map([[runs.key, true]]) }, false);
    expect(open.filter((r) => r.is === 'thing' && r.group === runs)).toHaveLength(AT_ONCE);
    expect(open.find((r) => r.is === 'more')).toMatchObject({ left: runs.things.length - AT_ONCE });
  });

  test('one of them that is chosen has its line', () => {
    const last = runs.things.at(-1)!;
    const rows = rowsOf(groups, unfoldedTo(groups, closed, last.id), false);
    expect(rows.some((r) => r.is === 'thing' && r.thing.id === last.id)).toBe(true);
  });

  test('in the order of their numbers', () => {
    const names = runs.things.map((t) => t.name).filter((n) => /^Run \d+$/.test(n));
    expect(names.slice(0, 3)).toEqual(['Run 0', 'Run 1', 'Run 2']);
    expect(names.at(-1)).toBe('Run 999');
  });
});
