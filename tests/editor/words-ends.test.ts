import { describe, expect, test } from 'vitest';
import { createWords } from '../../src/editor/words/create-words.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { editorOf } from './hand.ts';

/** A meter told in words on an empty page, and a boiler or hob that is drawn already. */
function house(kind: string, at: { x: number; y: number; mm: number }, fields: Record<string, unknown> = {}) {
  const editor = editorOf();
  const height = { from: 'floor', of: 'ground', mm: at.mm };
  const place = { on: 'storey', x: at.x, y: at.y, angleDeg: 0, height };
  const made = editor.run('point.add', { kind, storey: 'ground', place, fields });
  const point = made.ok ? (made.made[0] ?? '') : '';
  const words = createWords(editor);
  for (const key of ['gas', 'gas-meter', 'up', 'to void']) expect(words.press(key), key).toBe(true);
  const state = () => editor.store.getState();
  const told = () => words.chips().map((c) => `${c.label} ${c.value}`.trim());
  const end = () => {
    const run = words.store.getState().run ?? '';
    const nodes = Object.values(state().plan.legs).filter((l) => l.run === run);
    return state().plan.nodes[nodes.at(-1)?.b ?? ''];
  };
  return { editor, words, point, state, told, end };
}

const key = (point: string): string => `to ${point}/gas`;

describe('ending at what is drawn', () => {
  test('a free tail is offered beside the things that would be new, under words of its own', () => {
    const { words, point } = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    const ends = words.keys().filter((k) => k.group === 'end');
    expect(ends[0]).toEqual({ id: key(point), label: 'Boiler, drawn', group: 'end' });
    expect(ends.map((k) => k.label)).toContain('Boiler');
    expect(new Set(ends.map((k) => k.label)).size).toBe(ends.length);
  });

  test('a tail that a pipe meets, and the one it started at, are not offered', () => {
    const { words, point } = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    expect(words.press(key(point))).toBe(true);
    for (const k of ['class 24', 'gas', 'gas-meter', 'up', 'to void']) expect(words.press(k), k).toBe(true);
    expect(words.keys().filter((k) => k.id.startsWith('to ') && k.group === 'end')).toEqual([]);
  });

  test('the legs left are laid axis by axis, as one step, and the run is told to its end', () => {
    const { editor, words, point, state, told, end } = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    const steps = state().history.undo.length;
    expect(words.press(key(point))).toBe(true);
    expect(state().history.undo.length).toBe(steps + 1);
    expect(state().history.undo.at(-1)).toBe('take gas to Boiler');
    expect(end()?.place).toEqual({ on: 'connection', point, connection: 'gas' });
    expect(danglingReferences(state().plan)).toEqual([]);
    for (const leg of Object.values(state().plan.legs)) {
      const [a, b] = [leg.a, leg.b].map((id) => nodePlace(state().plan, state().plan.nodes[id]!)!.at);
      const moved = [a!.x - b!.x, a!.y - b!.y, a!.z - b!.z].filter((d) => Math.abs(d) > 0.2);
      expect(moved, 'one axis a leg').toHaveLength(1);
    }
    expect(told().at(-1)).toBe('Boiler');
    expect(words.store.getState().phase).toBe('class');
    editor.undo();
    expect(Object.keys(state().plan.legs)).toHaveLength(1);
  });

  test('a way that is set out on is gone first, its digits are kept where there are any', () => {
    const ahead = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    for (const k of ['ahead', 'digit 9', '00', 'left']) expect(ahead.words.press(k)).toBe(true);
    expect(ahead.words.press(key(ahead.point))).toBe(true);
    const ways = ahead.told().filter((t) => /^(left|right|ahead|down|up) /.test(t));
    expect(ways.slice(1, 3)).toEqual(['ahead 900', expect.stringMatching(/^left /)]);

    const typed = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    for (const k of ['ahead', 'digit 9', '00']) expect(typed.words.press(k)).toBe(true);
    expect(typed.words.press(key(typed.point))).toBe(true);
    expect(typed.told()).toContain('ahead 900');
  });

  test('a tail that does not lie that way is refused in words, and nothing is laid', () => {
    const { words, point, state } = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    const { plan } = state();
    words.press('right');
    expect(words.press(key(point))).toBe(false);
    expect(state().said?.refusal).toBe(true);
    expect(state().said?.text).toMatch(/^Boiler is not right from here: it is \d+ left/);
    expect(state().plan).toBe(plan);
  });

  test('a tail that lies behind is gone to by another way first, and straight back is refused', () => {
    const behind = house('boiler', { x: 5000, y: 2500, mm: 1200 });
    for (const k of ['ahead', 'digit 9', '00', '0']) expect(behind.words.press(k)).toBe(true);
    expect(behind.words.press(key(behind.point))).toBe(true);
    const lines = Object.values(behind.state().plan.legs).map((leg) =>
      [leg.a, leg.b].map((id) => nodePlace(behind.state().plan, behind.state().plan.nodes[id]!)!.at),
    );
    const ways = lines.map(([a, b]) => [b!.x - a!.x, b!.y - a!.y, b!.z - a!.z].map((d) => Math.sign(Math.round(d))));
    for (const [i, way] of ways.entries()) {
      const next = ways[i + 1];
      if (next) expect(next, 'no leg turns straight back').not.toEqual(way.map((d) => (d === 0 ? 0 : -d)));
    }

    const tail = behind.state().plan.points[behind.point]!.connections.find((c) => c.id === 'gas')!;
    const start = house('boiler', { x: -3000, y: 0, mm: 0 });
    const outlet = Object.values(start.state().plan.nodes)[1]!;
    const at = nodePlace(start.state().plan, outlet)!.at;
    const place = { on: 'storey', x: at.x - 2000, y: at.y + tail.at.y, angleDeg: 0 } as const;
    const height = { from: 'floor', of: 'ground', mm: at.z - tail.at.z };
    expect(start.editor.run('point.move', { point: start.point, place: { ...place, height } }).ok).toBe(true);
    for (const k of ['ahead', 'digit 9', '00']) expect(start.words.press(k)).toBe(true);
    const legs = Object.keys(start.state().plan.legs).length;
    expect(start.words.press(key(start.point))).toBe(false);
    expect(start.state().said?.text).toMatch(/^Boiler lies straight back, \d+ back: shorten the last leg first\.$/);
    expect(Object.keys(start.state().plan.legs).length).toBe(legs + 1);
  });

  test('what has told how much it burns is not asked for its class', () => {
    const { words, point } = house('boiler', { x: 5000, y: 2500, mm: 1200 }, { inputKwHeating: 24 });
    expect(words.press(key(point))).toBe(true);
    expect(words.store.getState().phase).toBe('told');
  });

  test('a first leg may reach it, from a tail with nothing laid yet', () => {
    const editor = editorOf();
    const height = { from: 'floor', of: 'ground', mm: 1200 };
    const place = { on: 'storey', x: 3000, y: 0, angleDeg: 0, height };
    const made = editor.run('point.add', { kind: 'boiler', storey: 'ground', place });
    const point = made.ok ? (made.made[0] ?? '') : '';
    const words = createWords(editor);
    for (const k of ['gas', 'gas-meter', key(point)]) expect(words.press(k), k).toBe(true);
    const { plan } = editor.store.getState();
    expect(Object.keys(plan.runs)).toHaveLength(1);
    expect(words.store.getState().run).toBe(Object.keys(plan.runs)[0]);
    expect(words.press('class 24')).toBe(true);
    expect(words.store.getState().phase).toBe('told');
  });
});
