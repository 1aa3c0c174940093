import { describe, expect, test } from 'vitest';
import { createWords } from '../../src/editor/words/create-words.ts';
import { resolveHeight } from '../../src/geometry/heights.ts';
import { lengthBetween } from '../../src/geometry/places.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { drawn } from './drawn.ts';
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

/** "gas meter up void" for short: keys of the pad, with spaces as underscores. */
const say = (words: ReturnType<typeof createWords>, script: string): boolean[] =>
  script.split(' ').map((key) => words.press(key.replaceAll('_', ' ')));

const told = (words: ReturnType<typeof createWords>) => words.chips().map((c) => `${c.label} ${c.value}`.trim());

describe('telling again', () => {
  const whole = () => {
    const editor = editorOf();
    const words = createWords(editor);
    expect(FORTY_SECONDS.every((key) => words.press(key))).toBe(true);
    return { editor, words };
  };

  test('a leg: the chip, its digits and keep, and the boiler goes along', () => {
    const { editor, words } = whole();
    const boiler = () => Object.values(editor.store.getState().plan.points).find((p) => p.kind === 'boiler')!.place;
    const before = boiler();
    expect(words.retype(1)).toBe(true);
    say(words, '5 00');
    expect(told(words)).toContain('ahead 500');
    expect(words.chips().find((c) => c.stepIndex === 1)?.pending).toBe(true);
    say(words, 'keep');
    expect(told(words)).toEqual([
      'Gas',
      'Gas meter',
      'up to void',
      'ahead 500',
      'left 2600',
      'down boiler tail',
      'Boiler',
      '30 kW class',
    ]);
    const after = boiler();
    expect(before.on === 'storey' && after.on === 'storey' && before.x - after.x).toBe(3700);
    expect(editor.store.getState().history.undo.at(-1)).toBe('tell gas run again');
    editor.undo();
    expect(told(words)).toContain('ahead 4200');
  });

  test('a height by digits: the pipe at that level follows, tails stay', () => {
    const { words } = whole();
    words.retype(0);
    say(words, '1 5 00 keep');
    expect(told(words).slice(2, 6)).toEqual(['up 1500', 'ahead 4200', 'left 2600', 'down boiler tail']);
    words.retype(0);
    expect(say(words, 'to_void')).toEqual([true]);
    expect(told(words).slice(2, 6)).toEqual(['up to void', 'ahead 4200', 'left 2600', 'down boiler tail']);
  });

  test('the height of what it ends at by a word: the boiler goes along', () => {
    const { editor, words } = whole();
    words.retype(3);
    expect(say(words, 'off_floor')).toEqual([true]);
    expect(told(words)[5]).toBe('down 150 off floor');
    const boiler = Object.values(editor.store.getState().plan.points).find((p) => p.kind === 'boiler')!;
    expect(boiler.place.height).toEqual({ from: 'floor', of: 'ground', mm: 150 });
  });

  test('a height that would turn the pipe back into its tail is refused in words', () => {
    const { editor, words } = whole();
    const { plan } = editor.store.getState();
    words.retype(0);
    expect(say(words, 'off_floor')).toEqual([false]);
    expect(editor.store.getState().said).toMatchObject({ refusal: true });
    expect(editor.store.getState().plan).toBe(plan);
  });

  test('the class of the boiler', () => {
    const { editor, words } = whole();
    words.retype('class');
    expect(words.keys().map((k) => k.label)).toContain('24 kW class');
    say(words, 'class_24');
    expect(told(words).at(-1)).toBe('24 kW class');
    expect(Object.keys(editor.store.getState().plan.points)).toHaveLength(2);
  });

  test('back leaves a chip as it was', () => {
    const { editor, words } = whole();
    const { plan } = editor.store.getState();
    words.retype(1);
    say(words, '9 back');
    expect(editor.store.getState().plan).toBe(plan);
    expect(told(words)).toContain('ahead 4200');
  });
});

describe('while it is told', () => {
  test('each word is in the document at once, the digits of the live leg are shown as it would be', () => {
    const editor = editorOf();
    const words = createWords(editor);
    say(words, 'gas gas-meter');
    expect(Object.keys(editor.store.getState().plan.points)).toHaveLength(1);
    say(words, 'up to_void');
    expect(Object.keys(editor.store.getState().plan.legs)).toHaveLength(1);
    say(words, 'ahead 4 2 00');
    const { plan, draft, history } = editor.store.getState();
    expect(Object.keys(plan.legs)).toHaveLength(1);
    expect(Object.keys(draft?.plan?.legs ?? {})).toHaveLength(2);
    expect(draft?.moved.size).toBe(2);
    expect(history.undo).toHaveLength(2);
    say(words, 'right');
    expect(editor.store.getState().draft).toBeNull();
    expect(Object.keys(editor.store.getState().plan.legs)).toHaveLength(2);
  });

  test('rub takes a digit, back takes a leg, and goes back as far as the empty page', () => {
    const editor = editorOf();
    const words = createWords(editor);
    const empty = editor.store.getState().plan;
    say(words, 'gas gas-meter up to_void ahead 4 2 rub 5 00 left');
    expect(told(words)).toEqual(['Gas', 'Gas meter', 'up to void', 'ahead 4500', 'left']);
    say(words, 'back back');
    expect(told(words)).toEqual(['Gas', 'Gas meter', 'up to void']);
    say(words, 'back back');
    expect(told(words)).toEqual(['Gas']);
    expect(words.store.getState().phase).toBe('from');
    expect(editor.store.getState().plan).toEqual(empty);
  });

  test('same height goes back to the level before, repeat says the last length again', () => {
    const editor = editorOf();
    const words = createWords(editor);
    say(words, 'gas gas-meter down off_floor ahead 1 00 up 9 00 left repeat down same_height ahead 2 00 keep');
    expect(told(words)).toEqual([
      'Gas',
      'Gas meter',
      'down 150 off floor',
      'ahead 100',
      'up 900',
      'left 100',
      'down 150 off floor',
      'ahead 200',
    ]);
    expect(words.store.getState().phase).toBe('told');
  });

  test('a tee tells a branch, and the run it came off goes on after it', () => {
    const editor = editorOf();
    const words = createWords(editor);
    say(words, 'gas gas-meter up to_void ahead 2 0 00 tee left 1 5 00 down hob');
    const { plan } = editor.store.getState();
    expect(Object.keys(plan.runs)).toHaveLength(2);
    expect(words.store.getState().waiting).toEqual([]);
    expect(told(words)).toEqual(['Gas', 'Gas meter', 'up to void', 'ahead 2000']);
    expect(say(words, 'ahead 3 0 00 down boiler_tail boiler class_24 keep').every(Boolean)).toBe(true);
    const after = editor.store.getState().plan;
    const meets = Object.values(after.nodes).map(
      (n) => Object.values(after.legs).filter((l) => l.a === n.id || l.b === n.id).length,
    );
    expect(Math.max(...meets)).toBe(3);
    expect(Object.values(after.points).map((p) => p.kind)).toEqual(['gas-meter', 'hob', 'boiler']);
    expect(danglingReferences(after)).toEqual([]);
  });

  test('keys that mean nothing now do nothing', () => {
    const editor = editorOf();
    const words = createWords(editor);
    expect(say(words, 'up 4 keep boiler to_void tee class_30')).toEqual(Array(7).fill(false));
    say(words, 'gas gas-meter');
    expect(say(words, '4 to_void rub hob')).toEqual(Array(4).fill(false));
    expect(editor.store.getState().history.undo).toEqual(['place gas meter']);
  });

  test('a drawn void is meant before the one that is assumed', () => {
    const { editor } = drawn();
    const outline = [0, 1, 2, 3].map((i) => ({ x: i === 1 || i === 2 ? 4000 : 0, y: i > 1 ? 3000 : 0 }));
    const height = (mm: number) => ({ from: 'ceiling', of: 'ground', mm });
    const made = editor.run('void.add', {
      storey: 'ground',
      kind: 'ceiling',
      outline,
      bottom: height(20),
      top: height(220),
    });
    const id = made.ok ? made.made[0] : '';
    const words = createWords(editor);
    words.resume(null);
    say(words, 'cold');
    const tail = words.keys().find((k) => k.group === 'from')!;
    expect(tail.id).toMatch(/^stop-tap$|^at /);
    const { plan } = editor.store.getState();
    const run = Object.values(plan.runs).find((r) => r.service === 'cold')!;
    expect(words.resume(run.id)).toBe(true);
    expect(say(words, 'up to_void')).toEqual([true, true]);
    const node = Object.values(editor.store.getState().plan.nodes).at(-1)!;
    expect(node.place).toMatchObject({ height: { from: 'voidBottom', of: id, mm: 100 } });
    expect(words.chips().at(-1)).toMatchObject({ label: 'up', value: 'to void', assumed: false });
  });

  test('a run drawn by hand is told in words too', () => {
    const { editor, id } = drawn();
    const words = createWords(editor);
    expect(words.resume(id.gas!)).toBe(true);
    expect(told(words)).toEqual(['Gas', 'Gas meter', 'up 1300', 'ahead 825', 'left 1115']);
    expect(words.resume('gone')).toBe(false);
  });
});
