import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { describe, expect, test } from 'vitest';
import { readPlan } from '../../src/files/format/read-plan.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { RECORD_MAPS } from '../../src/plan/plan.ts';
import type { HeightRef } from '../../src/plan/records/parts.ts';

/** A file as version 1 wrote it. It is never written anew: whatever comes later has to open it. */
const text = readFileSync(fileURLToPath(new URL('../fixtures/version-1.plan.json', import.meta.url)), 'utf8');
const read = readPlan(text);
if (read.kind !== 'ok') throw new Error(read.sentence);
const plan = read.plan;

const heights: HeightRef[] = [
  ...Object.values(plan.points).map((p) => p.place.height),
  ...Object.values(plan.nodes).flatMap((n) => (n.place.on === 'storey' ? [n.place.height] : [])),
  ...Object.values(plan.voids).flatMap((v) => [v.bottom, v.top, v.joists?.bottom].filter((h) => h != null)),
];

describe('a stored file of version 1', () => {
  test('says it is one', () => {
    expect(JSON.parse(text)).toMatchObject({ format: 'kickset-plan', version: 1 });
  });

  test.each(RECORD_MAPS)('holds %s', (map) => {
    expect(Object.keys(plan[map]).length).toBeGreaterThan(0);
  });

  test('holds every way a height is told', () => {
    const froms = new Set(heights.map((h) => h.from));
    expect([...froms].sort()).toEqual(['ceiling', 'connection', 'datum', 'floor', 'voidBottom', 'voidTop']);
    expect(heights.some((h) => h.assumed)).toBe(true);
    expect(heights.some((h) => h.of !== null && h.of in plan.rooms)).toBe(true);
  });

  test('holds what is rare: fates, exceptions, groups, edits, pictures and their bytes', () => {
    expect(Object.values(plan.options.oA?.fates ?? {}).sort()).toEqual(['cap', 'keep', 'strip']);
    expect(plan.voids.vd1?.joists?.exceptions).toHaveLength(2);
    expect(plan.groups.gr1?.members).toEqual(['rG1', 'rF1']);
    expect(Object.values(plan.listEdits).map((e) => e.quantity)).toEqual([8, null]);
    expect(Object.values(plan.acknowledgements).map((a) => a.found === null)).toEqual([false, true]);
    expect(Object.values(plan.overrides).map((o) => o.scope)).toEqual(['pN', null]);
    expect(plan.things.t1?.fields).toMatchObject({ tails: ['flow', 'gas'] });
    expect(Object.keys(read.blobs)).toEqual([plan.blobRefs.b1?.hash]);
    expect(new Set(Object.values(plan.points).map((p) => p.place.on))).toEqual(new Set(['wall', 'storey']));
  });

  test('has a place for every node', () => {
    for (const node of Object.values(plan.nodes)) expect(nodePlace(plan, node), node.id).toBeDefined();
  });
});
