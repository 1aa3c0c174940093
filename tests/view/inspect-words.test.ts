import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { tubeKinds } from '../../src/catalogue/tubes.ts';
import { createEditor } from '../../src/editor/create-editor.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { between } from '../../src/report/quantity.ts';
import type { Report } from '../../src/report/report.ts';
import type { Row } from '../../src/report/section.ts';
import { legsInOrder } from '../../src/view/panels/inspect/leg-table.tsx';
import { limitNow } from '../../src/view/panels/inspect/sheet-limit.tsx';
import { sizeLabel, sizesInRow } from '../../src/view/panels/inspect/size-keys.tsx';
import { sayWorkHeight } from '../../src/view/ribbon/levels.ts';
import { keepInView } from '../../src/view/words/keep-in-view.ts';

function flat(): Plan {
  const read = readPlan(readFileSync(new URL('../../demo-plans/flat.plan.json', import.meta.url), 'utf8'));
  if (read.kind !== 'ok') throw new Error(read.sentence);
  return read.plan;
}
const plan = flat();

describe('sizes as keys', () => {
  const labels = (tube: { kind: string; size: string | null }) => {
    const { first, rest } = sizesInRow(tube);
    return { first: first.map((s) => sizeLabel(s, first)), rest: rest.length };
  };

  test('the usual ones of copper stand first, without their wall, the others behind one key', () => {
    expect(labels({ kind: 'copper', size: '28x0.9' }).first).toEqual(['15', '22', '28', '35']);
    expect(labels({ kind: 'copper', size: '28x0.9' }).rest).toBeGreaterThan(3);
  });

  test('what is chosen is always seen, and told apart from its like', () => {
    expect(labels({ kind: 'copper', size: '8x0.6' }).first).toEqual(['8', '15', '22', '28', '35']);
    expect(labels({ kind: 'copper', size: '35x1.0' }).first.slice(-2)).toEqual(['35 x 1.0', '35 x 1.2']);
  });

  test('a kind with no list of usual ones shows all it has', () => {
    const { first, rest } = sizesInRow({ kind: 'plastic', size: null });
    expect(first).toEqual(tubeKinds.get('plastic')?.sizes());
    expect(rest).toEqual([]);
    expect(sizesInRow({ kind: 'unknown', size: null }).first).toEqual([]);
  });
});

describe('a run, leg by leg', () => {
  const legs = legsInOrder(plan, { option: 'A', when: 'after' }, 'B-g1');

  test('from its source, with what stands at the end of each', () => {
    expect(legs.map((l) => l.id)).toEqual(['B-g1-1', 'B-g1-2', 'B-g1-3', 'B-g1-4']);
    expect(legs[0]?.endsAt).toBe('Elbow 28, 90 degrees');
    expect(legs[3]?.endsAt).toMatch(/^tee 28 x 22 x 15/i);
  });

  test('a run that is not there has none', () => {
    expect(legsInOrder(plan, { option: 'A', when: 'after' }, 'gone')).toEqual([]);
  });
});

describe('the limit from a sheet', () => {
  const row = (point: string, limit: number | null): Row => {
    const figure = between(0.1, 0.2, 'mbar', 2);
    const bar = { figure, limit, state: 'pass' } as const;
    return { kind: 'answer', label: '', of: '', figure, bar, say: '', room: null, ids: [point] };
  };
  const report = (rows: readonly Row[]) =>
    ({ sections: [{ id: 'gas-drop', title: '', order: 1, answer: '', state: 'pass', rows }] }) as unknown as Report;

  test('is that of the appliance, not of another', () => {
    const both = report([row('hob', 1), row('boiler', 0.8)]);
    expect(limitNow(both, 'boiler')).toBe(0.8);
    expect(limitNow(both, 'fire')).toBeNull();
    expect(limitNow(null, 'boiler')).toBeNull();
  });
});

describe('the work height in words', () => {
  const levels = [{ z: 150, label: 'skirting', height: { from: 'floor', of: 'B', mm: 150 } as const }];

  test('the name of a level where it is one, else what it is taken from', () => {
    expect(sayWorkHeight(plan, levels, { from: 'floor', of: 'B', mm: 150 })).toBe('skirting');
    expect(sayWorkHeight(plan, levels, { from: 'floor', of: 'B', mm: 160 })).toBe('160 off floor');
    expect(sayWorkHeight(plan, levels, { from: 'ceiling', of: 'B', mm: 150 })).toBe('150 over ceiling');
  });
});

describe('a told run stays in view', () => {
  const opened = (mmPerPx: number) => {
    const assumptions = {
      ceilingMm: 2400,
      buildUpMm: 250,
      inVoid: { mm: 2500, lo: 2450, hi: 2600 },
      boilerTail: { mm: 1100, lo: 900, hi: 1300 },
      meter: { mm: 500, lo: 300, hi: 900 },
      skirting: { mm: 50, lo: 30, hi: 100 },
      offFloorMm: 150,
      wallThicknessMm: 100,
      standOffMm: 25,
    };
    const editor = createEditor({ plan, ids: countingIds(), assumptions });
    editor.resizePane('plan', 700, 700);
    editor.setCamera('plan', { centre: [4000, 4000], mmPerPx });
    return editor;
  };

  test('the drawing is left alone while all of it is seen', () => {
    const editor = opened(40);
    const before = editor.store.getState().panes.plan.camera;
    expect(keepInView(editor, 'B-g1')).toBe(false);
    expect(keepInView(editor, null)).toBe(false);
    expect(editor.store.getState().panes.plan.camera).toBe(before);
  });

  test('and brought back whole where a leg has left it', () => {
    const editor = opened(2);
    expect(keepInView(editor, 'B-g1')).toBe(true);
    expect(keepInView(editor, 'B-g1')).toBe(false);
  });
});
