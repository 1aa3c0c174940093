import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import type { Selected } from '../../src/editor/editor-api.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { candidateRows, sayRow } from '../../src/view/hands/candidate-rows.ts';
import { editorOf, handOn } from '../editor/hand.ts';

/** Gas over heating over cold, laid over one another along one line. */
function stacked(): { readonly plan: Plan; readonly legs: readonly string[] } {
  const editor = editorOf();
  const hand = handOn(editor);
  const laid: readonly (readonly [service: string, mm: number])[] = [
    ['heatingFlow', 2270],
    ['gas', 2420],
    ['cold', 150],
  ];
  for (const [service, mm] of laid) {
    editor.setTool('run');
    editor.setInHand({ service, height: { from: 'floor', of: 'ground', mm } });
    editor.setInHand({ tube: { kind: 'copper', size: '22' } });
    const off = laid.findIndex(([s]) => s === service) * 4000;
    hand.play(`down ${off},0 up down ${off},3000 up`);
    editor.key({ key: 'Enter', ctrl: false, shift: false, alt: false });
  }
  const { plan } = editor.store.getState();
  return { plan, legs: Object.keys(plan.legs) };
}

const tapped = (plan: Plan, legs: readonly string[]): Selected[] =>
  legs.flatMap((id): Selected[] => [
    { map: 'runs', id: plan.legs[id]?.run ?? '' },
    { map: 'legs', id },
  ]);

describe('what lies under a tap', () => {
  test('pipes over one another come as kind, size and height, the highest first', () => {
    const { plan, legs } = stacked();
    const rows = candidateRows(plan, tapped(plan, legs));
    expect(rows.map(sayRow)).toEqual(['Gas 22, 2420', 'Heating flow 22, 2270', 'Cold 22, 150']);
    expect(rows.map((r) => r.service)).toEqual(['gas', 'heatingFlow', 'cold']);
    expect(rows.map((r) => r.chooses.map)).toEqual(['runs', 'runs', 'runs']);
  });

  test('one pipe with its leg and corner is nothing to choose between', () => {
    const { plan, legs } = stacked();
    const [leg] = legs;
    const node = plan.legs[leg ?? '']?.a ?? '';
    expect(candidateRows(plan, [...tapped(plan, [leg ?? '']), { map: 'nodes', id: node }])).toEqual([]);
  });

  test('the room and the wall they stand in come last, and by themselves are not offered', () => {
    const read = readPlan(readFileSync(new URL('../../demo-plans/flat.plan.json', import.meta.url), 'utf8'));
    if (read.kind !== 'ok') throw new Error('the flat cannot be read');
    const { plan } = read;
    const wall: Selected = { map: 'walls', id: Object.keys(plan.walls)[0] ?? '' };
    const room: Selected = { map: 'rooms', id: Object.keys(plan.rooms)[0] ?? '' };
    expect(candidateRows(plan, [wall, room])).toEqual([]);
    const [a, b] = Object.values(plan.legs).filter((l, i, all) => all.findIndex((o) => o.run === l.run) === i);
    const both = tapped(plan, [a?.id ?? '', b?.id ?? '']);
    expect(candidateRows(plan, [wall, ...both, room]).map((r) => r.chooses.map)).toEqual([
      'runs',
      'runs',
      'walls',
      'rooms',
    ]);
  });

  test('what is gone is left out', () => {
    const { plan, legs } = stacked();
    const rows = candidateRows(plan, [...tapped(plan, legs.slice(0, 2)), { map: 'points', id: 'gone' }]);
    expect(rows).toHaveLength(2);
  });
});
