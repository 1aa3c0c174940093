import { expect, test } from 'vitest';
import { createWords } from '../../src/editor/words/create-words.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { editorOf } from './hand.ts';

function tellTurn(side: 'left' | 'right', degrees: readonly string[]) {
  const editor = editorOf();
  const words = createWords(editor);
  const way = ['gas', 'gas-meter', 'up', 'to void', 'ahead', 'digit 1', '00', '0'].map((k) =>
    k === '0' ? 'digit 0' : k,
  );
  for (const key of [...way, side, ...degrees]) expect(words.press(key), key).toBe(true);
  return { editor, words };
}

test('digits after left are degrees once they are said to be, and the way is told back with them', () => {
  const { editor, words } = tellTurn('left', ['digit 4', 'digit 5']);
  expect(words.keys().find((k) => k.id === 'own angle')?.label).toBe('turn 45 degrees');
  for (const key of ['own angle', 'digit 1', '00', 'digit 0', 'keep']) expect(words.press(key), key).toBe(true);
  const { plan } = editor.store.getState();
  const leg = Object.values(plan.legs).at(-1)!;
  const [a, b] = [leg.a, leg.b].map((n) => nodePlace(plan, plan.nodes[n]!)!.at);
  expect(b!.x - a!.x).toBeCloseTo(1000 * Math.SQRT1_2, 1);
  expect(b!.y - a!.y).toBeCloseTo(1000 * Math.SQRT1_2, 1);
  expect(
    words
      .chips()
      .filter((c) => c.kind === 'step')
      .map((c) => `${c.label} ${c.value}`),
  ).toEqual(['up to void', 'ahead 1000', 'left 45 1000']);
});

test('a turn straight back, or no turn at all, is no angle', () => {
  for (const degrees of [['digit 1', 'digit 8', 'digit 0'], []]) {
    const { words } = tellTurn('right', degrees);
    expect(words.keys().some((k) => k.id === 'own angle')).toBe(false);
    expect(words.press('own angle')).toBe(false);
  }
});
