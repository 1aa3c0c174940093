import { describe, expect, test } from 'vitest';
import { evaluate } from '../../src/engine/evaluate.ts';
import { RECORD_MAPS } from '../../src/plan/plan.ts';
import { sameRecords } from '../../src/plan/same-records.ts';
import { demoPlan } from '../engine/demo-file.ts';

const AFTER = { option: 'A', when: 'after' } as const;

describe('a plan that comes again from another thread', () => {
  test('keeps every record that says the same, and the maps that hold nothing else', () => {
    const before = demoPlan('flat');
    const again = sameRecords(before, structuredClone(before));
    for (const name of [...RECORD_MAPS, 'basis', 'job'] as const) expect(again[name]).toBe(before[name]);
    const colder = structuredClone(before);
    colder.basis.coldC = 4;
    expect(sameRecords(before, colder)).toEqual(colder);
    expect(sameRecords(before, colder).basis).not.toBe(before.basis);
    expect(again).toEqual(before);
  });

  test('takes what changed, came or went, and only that', () => {
    const before = demoPlan('flat');
    const next = structuredClone(before);
    const [changed, gone, other] = Object.keys(next.walls);
    const wall = next.walls[changed ?? ''];
    if (!wall || gone === undefined || other === undefined) throw new Error('the flat has walls');
    wall.thicknessMm = (wall.thicknessMm + 10) as typeof wall.thicknessMm;
    delete next.walls[gone];
    const kept = sameRecords(before, structuredClone(next));
    expect(kept).toEqual(next);
    expect(Object.keys(kept.walls)).toEqual(Object.keys(next.walls));
    expect(kept.walls[changed ?? '']).not.toBe(before.walls[changed ?? '']);
    expect(kept.walls[other]).toBe(before.walls[other]);
    expect(kept.points).toBe(before.points);
    // And back again: what went is there once more.
    expect(sameRecords(kept, structuredClone(before))).toEqual(before);
  });

  test('another job shares nothing', () => {
    const flat = demoPlan('flat');
    const semi = demoPlan('semi');
    expect(sameRecords(flat, semi)).toBe(semi);
  });

  test('says the same of it, byte for byte', () => {
    const before = demoPlan('semi');
    const next = structuredClone(before);
    for (const wall of Object.values(next.walls).slice(0, 3)) wall.a.x = (wall.a.x + 20) as typeof wall.a.x;
    const kept = sameRecords(before, structuredClone(next));
    evaluate(before, AFTER);
    expect(JSON.stringify(evaluate(kept, AFTER))).toBe(JSON.stringify(evaluate(next, AFTER)));
  });
});
