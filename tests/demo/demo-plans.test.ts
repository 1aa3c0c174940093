import { readFileSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as v from 'valibot';
import { describe, expect, test } from 'vitest';
import { writePlan } from '../../src/files/format/write-plan.ts';
import { type Plan, planSchema } from '../../src/plan/plan.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { extensionPlan } from './extension-plan.ts';
import { flatPlan } from './flat-plan.ts';
import { semiPlan } from './semi-plan.ts';
import { twoStoreyPlan } from './two-storey-plan.ts';

const demos: readonly [name: string, make: () => Plan][] = [
  ['extension', extensionPlan],
  ['flat', flatPlan],
  ['semi', semiPlan],
  ['two-storey', twoStoreyPlan],
];

describe.each(demos)('demo plan %s', (name, make) => {
  const path = fileURLToPath(new URL(`../../demo-plans/${name}.plan.json`, import.meta.url));
  const plan = make();

  test('is what its builder gives', () => {
    const fresh = writePlan(plan, { savedAt: '2026-05-01T09:00:00.000Z', writer: 'Kickset demo plans', blobs: {} });
    if (process.env.KICKSET_WRITE === '1') writeFileSync(path, fresh);
    expect(readFileSync(path, 'utf8')).toBe(fresh);
  });

  test('is sound', () => {
    expect(v.safeParse(planSchema, plan).issues).toBeUndefined();
    expect(danglingReferences(plan)).toEqual([]);
  });
});
