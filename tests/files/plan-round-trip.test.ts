import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import * as fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { checkPlan } from '../../src/files/format/check-plan.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import { writePlan } from '../../src/files/format/write-plan.ts';
import { arbitraryPlan } from '../fixtures/arbitrary-plan.ts';

const at = (path: string) => fileURLToPath(new URL(`../../${path}`, import.meta.url));
const write = { savedAt: '2026-05-01T09:00:00.000Z', writer: 'Kickset test', blobs: {} };
/** Plan part of a file's bytes: what stands from its brace up to the blobs. */
const planBytes = (text: string) => text.slice(text.indexOf('"plan":'), text.lastIndexOf('"blobs":'));

function opened(text: string) {
  const read = readPlan(text);
  if (read.kind !== 'ok') throw new Error(read.sentence);
  return read;
}

describe('saving and opening', () => {
  test('any plan comes back as it was, and saves to the same bytes', () => {
    fc.assert(
      fc.property(arbitraryPlan, (plan) => {
        const text = writePlan(plan, write);
        const read = opened(text);
        expect(read.plan).toEqual(plan);
        expect(writePlan(read.plan, write)).toBe(text);
      }),
      { numRuns: 60 },
    );
  });

  test.each(['demo-plans/flat.plan.json', 'tests/fixtures/version-1.plan.json'])(
    '%s saves to its own bytes',
    (path) => {
      const text = readFileSync(at(path), 'utf8');
      const read = opened(text);
      const again = writePlan(read.plan, { savedAt: 'later', writer: 'another', blobs: read.blobs });
      expect(planBytes(again)).toBe(planBytes(text));
      expect(JSON.parse(again).blobs).toEqual(JSON.parse(text).blobs);
    },
  );

  test('numbers keep their shortest form, and minus zero is zero', () => {
    const plan = opened(readFileSync(at('demo-plans/flat.plan.json'), 'utf8')).plan;
    plan.walls.BW!.thicknessMm = 250.1;
    plan.walls.BW!.a.x = -0;
    const text = writePlan(plan, write);
    expect(text).toContain('"thicknessMm": 250.1,');
    expect(text).not.toContain('-0,');
  });

  test('a plan made at random is sound, so the property above says something', () => {
    const plans = fc.sample(arbitraryPlan, { numRuns: 40, seed: 7 });
    for (const plan of plans) expect(checkPlan(JSON.parse(JSON.stringify(plan)))).toEqual([]);
    expect(plans.some((plan) => Object.values(plan.nodes).some((n) => n.place.on === 'connection'))).toBe(true);
  });
});
