import { describe, expect, test } from 'vitest';
import { createEditor } from '../../src/editor/create-editor.ts';
import type { Editor, HistoryEntry } from '../../src/editor/editor-api.ts';
import { createWords } from '../../src/editor/words/create-words.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { assumptions, blank, editorOf, handOn, idsFor, press } from './hand.ts';

/** Keeps what a store would: the plan and both stacks, as text. */
function keeper(editor: Editor) {
  const undo: HistoryEntry[] = [];
  const redo: HistoryEntry[] = [];
  editor.onCommit((entry, kind) => {
    if (kind === 'do') {
      undo.push(entry);
      redo.length = 0;
    } else if (kind === 'undo') redo.push(undo.pop() ?? entry);
    else undo.push(redo.pop() ?? entry);
  });
  return () => JSON.stringify({ plan: editor.store.getState().plan, undo, redo });
}

function reopened(text: string): Editor {
  const kept = JSON.parse(text) as { plan: Plan; undo: HistoryEntry[]; redo: HistoryEntry[] };
  const editor = createEditor({ plan: blank(), ids: idsFor(kept.plan), assumptions });
  editor.restore(kept.plan, kept.undo, kept.redo);
  return editor;
}

describe('after a reload', () => {
  test('the open run is there, and undo and redo go on where they were', () => {
    const editor = editorOf();
    const save = keeper(editor);
    const hand = handOn(editor);
    const start = editor.store.getState().plan;
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    hand.tap(1000, 900);
    editor.undo();
    const again = reopened(save());
    expect(again.store.getState().plan).toEqual(editor.store.getState().plan);
    expect(again.store.getState().history).toEqual({ undo: ['start gas run'], redo: ['carry on gas run'] });
    again.redo();
    expect(Object.keys(again.store.getState().plan.legs)).toHaveLength(2);
    again.undo();
    again.undo();
    expect(again.store.getState().plan).toEqual(start);
  });

  test('a run told in words goes on with the next word', () => {
    const editor = editorOf();
    const save = keeper(editor);
    const words = createWords(editor);
    for (const key of ['gas', 'gas-meter', 'up', 'to void', 'ahead', '4', '2', '00', 'left', '2']) words.press(key);
    const again = createWords(reopened(save()));
    expect(again.chips().map((c) => `${c.label} ${c.value}`.trim())).toEqual([
      'Gas',
      'Gas meter',
      'up to void',
      'ahead 4200',
    ]);
    expect(again.store.getState().phase).toBe('route');
    for (const key of ['left', '2', '6', '00', 'down', 'boiler tail', 'boiler', 'class 24', 'keep']) {
      expect(again.press(key), key).toBe(true);
    }
    expect(again.chips().map((c) => c.value)).toContain('2600');
  });

  test('the choice comes back with an undo, the camera does not move', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.tap(0, 0);
    hand.tap(1000, 0);
    press(editor, 'Enter');
    const run = Object.keys(editor.store.getState().plan.runs)[0]!;
    editor.select([{ map: 'runs', id: run }]);
    editor.run('run.delete', { run });
    editor.setCamera('plan', { centre: [5, 5], mmPerPx: 3 });
    editor.undo();
    expect(editor.store.getState().selection).toEqual([{ map: 'runs', id: run }]);
    expect(editor.store.getState().panes.plan.camera).toEqual({ centre: [5, 5], mmPerPx: 3 });
    editor.redo();
    expect(editor.store.getState().selection).toEqual([]);
  });
});

describe('refusals', () => {
  test('change nothing and say why', () => {
    const editor = editorOf();
    const { plan } = editor.store.getState();
    const outcome = editor.run('run.delete', { run: 'gone' });
    expect(outcome).toEqual({ ok: false, why: 'That run is no longer there.' });
    expect(editor.store.getState()).toMatchObject({
      revision: 0,
      said: { text: 'That run is no longer there.', refusal: true },
    });
    expect(editor.store.getState().plan).toBe(plan);
    expect(editor.undo()).toEqual({ ok: false, why: 'There is nothing to undo.' });
  });

  test('arguments that do not fit are refused, a command that is not there throws', () => {
    const editor = editorOf();
    expect(editor.run('wall.add', { storey: 'ground' }).ok).toBe(false);
    expect(() => editor.run('wall.paint', {})).toThrow(/no command/);
  });

  test('a plan that may only be read is not changed, not by undo either', () => {
    const editor = editorOf();
    editor.run('plan.rename', { name: 'one' });
    editor.setReadOnly('This job is open in another tab.');
    expect(editor.run('plan.rename', { name: 'two' })).toEqual({ ok: false, why: 'This job is open in another tab.' });
    expect(editor.undo().ok).toBe(false);
    expect(editor.store.getState().plan.name).toBe('one');
  });

  test('a step on another floor says where it was', () => {
    const editor = editorOf();
    const first = editor.run('storey.add', { name: 'First floor', floorMm: 2650, ceilingMm: 2400, buildUpMm: 250 });
    const storey = first.ok ? first.made[0] : '';
    editor.run('wall.add', { storey, a: { x: 0, y: 0 }, b: { x: 900, y: 0 }, thicknessMm: 100, construction: 'block' });
    editor.undo();
    expect(editor.store.getState().said?.text).toBe('Undid "draw wall" on First floor.');
  });
});
