import { describe, expect, test } from 'vitest';
import { createWords } from '../../src/editor/words/create-words.ts';
import { resolveHeight } from '../../src/geometry/heights.ts';
import { lengthBetween } from '../../src/geometry/places.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { assumptions, editorOf } from './hand.ts';

const FORTY_SECONDS = [
  'gas',
  'gas-meter',
  'up',
  'to void',
  'ahead',
  'digit 4',
  'digit 2',
  '00',
  'left',
  'digit 2',
  'digit 6',
  '00',
  'down',
  'boiler tail',
  'boiler',
  'class 30',
  'keep',
];

describe('a run told in words', () => {
  test('is answered in seventeen touches on an empty page', () => {
    expect(FORTY_SECONDS).toHaveLength(17);
    const editor = editorOf();
    const words = createWords(editor);
    for (const key of FORTY_SECONDS) {
      expect(
        words.keys().map((k) => k.id),
        key,
      ).toContain(key);
      expect(words.press(key), key).toBe(true);
    }
    const { plan, history, selection } = editor.store.getState();
    const legs = Object.values(plan.legs);
    expect(legs).toHaveLength(4);
    const lengths = legs.map((l) => lengthBetween(plan, plan.nodes[l.a]!, plan.nodes[l.b]!));
    expect(lengths.map((l) => Math.round(l!.mm))).toEqual([2000, 4200, 2600, 1400]);
    expect(danglingReferences(plan)).toEqual([]);
    expect(Object.keys(plan.walls)).toEqual([]);
    expect(history.undo).toEqual([
      'place gas meter',
      'start gas run',
      'carry on gas run',
      'carry on gas run',
      'carry on gas run',
      'end at boiler',
      'change boiler',
    ]);
    expect(selection).toEqual([{ map: 'runs', id: Object.keys(plan.runs)[0] }]);
    const boiler = Object.values(plan.points).find((p) => p.kind === 'boiler')!;
    expect(boiler.fields.class).toBe('30');
    const tail = assumptions.boilerTail;
    expect(resolveHeight(plan, boiler.place.height)).toMatchObject({ z: tail.mm, lo: tail.lo, hi: tail.hi });
    expect(words.chips().map((c) => [c.label, c.value, c.assumed])).toEqual([
      ['', 'Gas', false],
      ['', 'Gas meter', true],
      ['up', 'to void', true],
      ['ahead', '4200', false],
      ['left', '2600', false],
      ['down', 'boiler tail', true],
      ['', 'Boiler', false],
      ['', '30 kW class', true],
    ]);
  });
});
