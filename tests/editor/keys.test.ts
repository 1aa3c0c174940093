import { describe, expect, test } from 'vitest';
import { whyNot, withChanges, withoutSigns } from '../../src/editor/key-changes.ts';
import { bindingOf, defaultKeys, sameChord } from '../../src/editor/keys.ts';
import { editorOf, press } from './hand.ts';

const bare = { ctrl: false, shift: false, alt: false };

describe('keys', () => {
  test('no two acts share a key, and every act has an id of its own', () => {
    const keys = defaultKeys();
    const clashes = keys.flatMap((a, i) => keys.slice(i + 1).filter((b) => sameChord(a, b)));
    expect(clashes).toEqual([]);
    expect(new Set(keys.map((k) => k.id)).size).toBe(keys.length);
  });

  test('a changed key does its act and the old one nothing', () => {
    const editor = editorOf();
    editor.setKeys(withChanges(defaultKeys(), { 'tool:wall': { key: 'q' } }), true);
    press(editor, 'w');
    expect(editor.store.getState().tool).toBe('select');
    press(editor, 'q');
    expect(editor.store.getState().tool).toBe('wall');
  });

  test('a change that clashes is refused in words, and left out where it was kept before', () => {
    const keys = defaultKeys();
    expect(whyNot(keys, 'tool:wall', { key: 'r' })).toMatch(/key of "Run"/);
    expect(whyNot(keys, 'tool:wall', { key: 'w' })).toBeNull();
    expect(whyNot(keys, 'tool:wall', { key: '4' })).toMatch(/Figures/);
    expect(whyNot(keys, 'tool:wall', { key: 'ArrowUp' })).toMatch(/moves about/);
    expect(whyNot(keys, 'fit', { key: 'w', ctrl: true })).toMatch(/browser/);
    const kept = withChanges(keys, { 'tool:wall': { key: 'r' } });
    expect(kept.find((k) => k.id === 'tool:wall')?.key).toBe('w');
    const swapped = withChanges(keys, { 'tool:wall': { key: 'r' }, 'tool:run': { key: 'w' } });
    expect(bindingOf(swapped, { key: 'r', ...bare })?.id).toBe('tool:wall');
    expect(bindingOf(swapped, { key: 'w', ...bare })?.id).toBe('tool:run');
  });

  test('bare letters can be off: what is held with ctrl stays, and the drawing still takes figures', () => {
    const editor = editorOf();
    editor.setKeys(withoutSigns(defaultKeys()), false);
    press(editor, 'r', '+');
    expect(editor.store.getState().tool).toBe('select');
    editor.setTool('wall');
    expect(editor.key({ key: '4', ...bare })).toBe(false);
    expect(editor.key({ key: 'z', ...bare, ctrl: true })).toBe(true);
    editor.setTool('run');
    expect(editor.store.getState().tool).toBe('run');
  });
});
