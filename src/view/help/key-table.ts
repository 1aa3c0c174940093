import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import { type KeyChanges, withChanges, withoutSigns } from '../../editor/key-changes.ts';
import { type Chord, defaultKeys, type KeyBinding } from '../../editor/keys.ts';
import { sayKey } from './say-key.ts';

/** What the device keeps of its keys. */
export interface KeyTable {
  readonly changes: KeyChanges;
  /** Letters and signs by themselves mean something; off: only on the drawing, where figures are typed. */
  readonly signs: boolean;
}

const KEY = 'kickset.keys';
const USUAL: KeyTable = { changes: {}, signs: true };

function isChord(value: unknown): value is Chord {
  return typeof value === 'object' && value !== null && 'key' in value && typeof value.key === 'string';
}

/** What was kept, as far as it can be read: a device's storage may hold anything. */
export function readTable(text: string | null): KeyTable {
  if (text === null) return USUAL;
  try {
    const kept: unknown = JSON.parse(text);
    if (typeof kept !== 'object' || kept === null) return USUAL;
    const changes = 'changes' in kept && typeof kept.changes === 'object' ? (kept.changes ?? {}) : {};
    const read = Object.entries(changes).flatMap(([id, chord]: [string, unknown]) =>
      isChord(chord) ? [[id, { key: chord.key, ctrl: chord.ctrl === true, shift: chord.shift === true }] as const] : [],
    );
    return { changes: Object.fromEntries(read), signs: !('signs' in kept) || kept.signs !== false };
  } catch {
    return USUAL;
  }
}

function stored(): string | null {
  try {
    return localStorage.getItem(KEY);
  } catch {
    return null;
  }
}

export const keyTable = createStore<KeyTable>(() => readTable(stored()));

function keep(table: KeyTable): void {
  keyTable.setState(table);
  try {
    if (table.signs && Object.keys(table.changes).length === 0) localStorage.removeItem(KEY);
    else localStorage.setItem(KEY, JSON.stringify(table));
  } catch {
    // It holds until the page is closed.
  }
}

export const changeKey = (id: string, chord: Chord): void =>
  keep({ ...keyTable.getState(), changes: { ...keyTable.getState().changes, [id]: chord } });

export function resetKey(id: string): void {
  const { [id]: _, ...changes } = keyTable.getState().changes;
  keep({ ...keyTable.getState(), changes });
}

export const resetKeys = (): void => keep({ ...keyTable.getState(), changes: {} });

export const switchSigns = (signs: boolean): void => keep({ ...keyTable.getState(), signs });

/** Every act with the key it has on this device. */
export const keysOf = ({ changes }: KeyTable): readonly KeyBinding[] => withChanges(defaultKeys(), changes);

/** The keys that count now. */
export function keysNow(): readonly KeyBinding[] {
  const table = keyTable.getState();
  return table.signs ? keysOf(table) : withoutSigns(keysOf(table));
}

/** What the bench prints on a tool; empty where its key is off. */
export function useToolLetter(tool: string): string {
  return useStore(keyTable, (table) => {
    const keys = table.signs ? keysOf(table) : withoutSigns(keysOf(table));
    const own = keys.find((k) => k.id === `tool:${tool}`);
    return own ? sayKey(own) : '';
  });
}
