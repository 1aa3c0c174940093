import type { KeyBinding } from '../../editor/keys.ts';

/** A key as it is printed: "Ctrl + Shift + Z", "R", "Esc". */
export function sayKey({ key, ctrl = false, shift = false }: Pick<KeyBinding, 'key' | 'ctrl' | 'shift'>): string {
  const name = key === 'Escape' ? 'Esc' : key.length === 1 ? key.toUpperCase() : key;
  return [ctrl ? 'Ctrl' : '', shift ? 'Shift' : '', name].filter((p) => p !== '').join(' + ');
}
