import { describe, expect, test } from 'vitest';
import type { Case } from '../../src/plan/plan.ts';
import { ghostChoices, ghostTitle } from '../../src/view/ghosts/ghost-choices.ts';
import { ghostParts } from '../../src/view/ghosts/ghost-parts.ts';
import { type Ghosts, hidesStripped, otherShown } from '../../src/view/ghosts/ghosts.ts';
import { demo } from '../drawing/demo.ts';

const plan = demo('two-storey');
const [low, high] = Object.values(plan.storeys).sort((a, b) => a.floorMm - b.floorMm);
const option = Object.keys(plan.options)[0] ?? null;
const AFTER: Case = { option, when: 'after' };
const BEFORE: Case = { option: null, when: 'before' };
const NONE: Ghosts = { below: false, above: false, other: null };
const up = high?.id ?? '';

describe('choosing what is faint', () => {
  test('a floor has only the floors next to it, and the case only the other ones', () => {
    const keys = (storey: string, chosen: Case): string[] => ghostChoices(plan, storey, chosen, NONE).map((c) => c.key);
    expect(keys(up, AFTER)).toContain('below');
    expect(keys(up, AFTER)).not.toContain('above');
    expect(keys(low?.id ?? '', AFTER)).toContain('above');
    expect(keys(up, AFTER)).toContain('before ');
    expect(keys(up, BEFORE)).not.toContain('before ');
    expect(keys(up, BEFORE)).toContain(`after ${option}`);
  });

  test('the title names each thing once; a second tap takes it away', () => {
    const shown: Ghosts = { below: true, above: false, other: BEFORE };
    const choices = ghostChoices(plan, up, AFTER, shown);
    expect(ghostTitle(choices)).toMatch(/^faint: [a-z].*, before$/);
    expect(ghostTitle(ghostChoices(plan, up, AFTER, NONE))).toBeNull();
    expect(choices.find((c) => c.key === 'before ')?.to.other).toBeNull();
    expect(choices.find((c) => c.key === 'below')?.to.below).toBe(false);
  });

  test('an option that is gone, and the case that is looked at, are no ghosts', () => {
    const gone: Ghosts = { ...NONE, other: { option: 'gone', when: 'after' } };
    expect(otherShown(plan, BEFORE, gone)).toBeNull();
    expect(otherShown(plan, AFTER, { ...NONE, other: AFTER })).toBeNull();
    expect(hidesStripped(plan, AFTER, { ...NONE, other: BEFORE })).toBe(true);
    expect(hidesStripped(plan, BEFORE, { ...NONE, other: AFTER })).toBe(false);
  });

  test('what comes out is a ghost while the drawing leaves it out', () => {
    const view = { kind: 'plan', storey: low?.id ?? '' } as const;
    const parts = ghostParts(plan, view, AFTER, { ...NONE, other: BEFORE });
    const stripped = Object.entries(plan.options[option ?? '']?.fates ?? {}).filter(([, fate]) => fate === 'strip');
    expect(stripped.length).toBeGreaterThan(0);
    const ids = new Set(parts.map((p) => p.fragment.id));
    expect(stripped.some(([id]) => ids.has(id))).toBe(true);
    expect(ghostParts(plan, view, AFTER, NONE)).toEqual([]);
  });
});
