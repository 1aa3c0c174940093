import { type Chord, isBareSign, type KeyBinding, sameChord } from './keys.ts';

/** Keys somebody chose for acts, by the id of the act. */
export type KeyChanges = Readonly<Record<string, Chord>>;

/** What the drawing and every field need for themselves: they steer, place, type and rub. */
const STEERING = new Set([
  'Enter',
  ' ',
  'Tab',
  'Backspace',
  'Delete',
  'ArrowUp',
  'ArrowDown',
  'ArrowLeft',
  'ArrowRight',
  'PageUp',
  'PageDown',
]);
const HOLDING = new Set(['Shift', 'Control', 'Alt', 'AltGraph', 'Meta', 'CapsLock', 'Dead', 'Unidentified', 'Process']);
/** No page gets these from its browser. */
const BROWSERS = new Set(['t', 'n', 'w']);

/** Nothing but a key that is held with others: whoever chooses a key has not pressed it yet. */
export const isHolding = (key: string): boolean => HOLDING.has(key);

/** Why a key cannot be had, in words; null where it can. */
export function whyNot(keys: readonly KeyBinding[], id: string, chord: Chord): string | null {
  if (STEERING.has(chord.key)) return 'This key moves about, places or rubs out. Take another.';
  if (/^\d$/.test(chord.key) && chord.ctrl !== true) return 'Figures are typed with it. Take another.';
  if (chord.key === 'Escape' && id !== 'cancel') return 'Esc gives up and closes. Take another.';
  if (chord.ctrl && BROWSERS.has(chord.key)) return 'The browser keeps this key for itself. Take another.';
  const taken = keys.find((k) => k.id !== id && sameChord(k, chord));
  return taken ? `It is the key of "${taken.label}". Change that one first, or take another.` : null;
}

/** The keys with what was changed. A change that clashes with a key of today (a tool came that has it) is left out. */
export function withChanges(keys: readonly KeyBinding[], changes: KeyChanges): readonly KeyBinding[] {
  const changed = keys.map((k): KeyBinding => {
    const chord = changes[k.id];
    if (!chord) return k;
    const { key: _, ctrl: __, shift: ___, ...rest } = k;
    return { ...rest, ...chord };
  });
  const clashes = (k: KeyBinding, i: number): boolean =>
    changes[k.id] !== undefined && changed.some((other, j) => j !== i && sameChord(other, k));
  return changed.map((k, i) => (clashes(k, i) ? (keys[i] ?? k) : k));
}

/** Without the keys that a slip or a spoken word presses. */
export const withoutSigns = (keys: readonly KeyBinding[]): readonly KeyBinding[] => keys.filter((k) => !isBareSign(k));
