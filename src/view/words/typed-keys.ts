import type { WordKey } from '../../editor/words/words-api.ts';

/** Keys of a keyboard that mean a key of the pad. Letters are the first of their word. */
const MEANS: Readonly<Record<string, string>> = {
  ArrowUp: 'up',
  ArrowDown: 'down',
  ArrowLeft: 'left',
  ArrowRight: 'right',
  a: 'ahead',
  t: 'tee',
  Backspace: 'rub',
  Delete: 'back',
  Enter: 'keep',
};

/** The pad's key that a typed one stands for; null where the pad does not offer it now. */
export function keyFor(typed: string, keys: readonly WordKey[]): string | null {
  const name = /^\d$/.test(typed) ? `digit ${typed}` : MEANS[typed];
  return name !== undefined && keys.some((k) => k.id === name) ? name : null;
}
