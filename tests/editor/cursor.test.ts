import { describe, expect, test } from 'vitest';
import '../../src/editor/later/later.ts';
import type { Editor, KeyInput } from '../../src/editor/editor-api.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { drawn } from './drawn.ts';
import { editorOf } from './hand.ts';

const on = (editor: Editor, key: string, change: Partial<KeyInput> = {}): boolean =>
  editor.key({ key, ctrl: false, shift: false, alt: false, drawing: true, ...change });
const keys = (editor: Editor, ...all: readonly string[]): void => {
  for (const key of all) on(editor, key);
};
const at = (editor: Editor) => editor.store.getState().cursor?.at;
const figures = (editor: Editor, mm: number): void => keys(editor, ...String(mm));
const ends = (editor: Editor) => {
  const { plan } = editor.store.getState();
  return Object.values(plan.nodes).map((n) => {
    const p = nodePlace(plan, n)?.at;
    return [p?.x, p?.y, p?.z].map((v) => Math.round(v ?? Number.NaN));
  });
};

describe('the cross', () => {
  test('is shown by the first arrow and goes in steps: shift longer, alt shorter, by a key another ladder', () => {
    const editor = editorOf();
    expect(at(editor)).toBeUndefined();
    keys(editor, 'ArrowRight');
    expect(at(editor)).toEqual([0, 0]);
    keys(editor, 'ArrowRight', 'ArrowUp');
    expect(at(editor)).toEqual([100, 100]);
    on(editor, 'ArrowRight', { shift: true });
    on(editor, 'ArrowDown', { alt: true });
    expect(at(editor)).toEqual([600, 90]);
    keys(editor, '[', 'ArrowLeft');
    expect(at(editor)).toEqual([590, 90]);
    expect(editor.store.getState().said?.text).toBe('Step 10.');
    keys(editor, ']', ']', 'ArrowLeft');
    expect(at(editor)).toEqual([90, 90]);
  });

  test('does not come where the drawing has not the focus, and goes when a pointer comes', () => {
    const editor = editorOf();
    editor.key({ key: 'ArrowRight', ctrl: false, shift: false, alt: false });
    expect(at(editor)).toBeUndefined();
    keys(editor, 'ArrowRight');
    const mods = { shift: false, alt: false, ctrl: false };
    editor.pointer({
      type: 'move',
      pointerId: 1,
      pointerType: 'mouse',
      pane: 'plan',
      x: 5,
      y: 5,
      buttons: 0,
      time: 0,
      ...mods,
    });
    expect(editor.store.getState().cursor).toBeNull();
  });

  test('leaves the arrows to what is chosen, which they move', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.cold! }]);
    const before = editor.store.getState().plan;
    keys(editor, 'ArrowUp');
    expect(at(editor)).toBeUndefined();
    expect(editor.store.getState().plan).not.toBe(before);
    keys(editor, 'Escape', 'ArrowUp');
    expect(at(editor)).toBeDefined();
  });

  test('the paper follows where it nears the edge', () => {
    const editor = editorOf();
    keys(editor, 'ArrowRight');
    const { centre } = editor.store.getState().panes.plan.camera;
    for (let i = 0; i < 12; i++) on(editor, 'ArrowRight', { shift: true });
    const { camera, width } = editor.store.getState().panes.plan;
    const px = ((at(editor)?.[0] ?? 0) - camera.centre[0]) / camera.mmPerPx + width / 2;
    expect(camera.centre[0]).toBeGreaterThan(centre[0]);
    expect(px).toBeLessThanOrEqual(width - 70);
  });

  test('jumps to the next place that would be caught, and says where there is none', () => {
    const editor = editorOf();
    editor.run('point.add', {
      kind: 'gas-meter',
      storey: 'ground',
      place: { on: 'storey', x: 3000, y: 100, angleDeg: 0 },
    });
    keys(editor, 'ArrowRight');
    on(editor, 'ArrowRight', { ctrl: true });
    const there = at(editor);
    expect(there?.[0]).toBeGreaterThan(2500);
    expect(Math.abs(there?.[1] ?? 999)).toBeLessThan(1000);
    on(editor, 'ArrowDown', { ctrl: true });
    on(editor, 'ArrowDown', { ctrl: true });
    on(editor, 'ArrowDown', { ctrl: true });
    expect(editor.store.getState().said?.text).toBe('Nothing to catch that way.');
  });
});

describe('a run by keys alone', () => {
  test('places, typed lengths in the way of an arrow before or after them, and Enter again ends it', () => {
    const editor = editorOf();
    keys(editor, 'r', 'ArrowRight', 'Enter');
    expect(editor.store.getState().toolState).toBe('aiming');
    keys(editor, 'ArrowRight');
    figures(editor, 2400);
    keys(editor, 'Enter');
    expect(ends(editor)).toEqual([
      [0, 0, 50],
      [2400, 0, 50],
    ]);
    expect(at(editor)).toEqual([2400, 0]);
    figures(editor, 700);
    keys(editor, 'ArrowUp', 'Enter');
    expect(ends(editor).at(-1)).toEqual([2400, 700, 50]);
    keys(editor, 'ArrowLeft', 'ArrowLeft', ' ');
    expect(ends(editor).at(-1)).toEqual([2200, 700, 50]);
    keys(editor, 'Enter');
    expect(editor.store.getState().toolState).toBe('idle');
    expect(editor.store.getState().history.undo).toHaveLength(3);
  });

  test('another height in hand rises at the place where it stands', () => {
    const editor = editorOf();
    keys(editor, 'r', 'ArrowRight', 'Enter', 'ArrowRight', 'Enter');
    editor.setInHand({ height: { from: 'floor', of: 'ground', mm: 2420 } });
    keys(editor, 'Enter');
    expect(ends(editor).at(-1)).toEqual([100, 0, 2420]);
    figures(editor, 1500);
    keys(editor, 'ArrowUp', 'Enter', 'Enter');
    expect(ends(editor).at(-1)).toEqual([100, 1500, 2420]);
    expect(editor.store.getState().toolState).toBe('idle');
  });

  test('two quick taps near by are two places', () => {
    const editor = editorOf();
    keys(editor, 'r', 'ArrowRight', 'Enter', 'ArrowUp', 'Enter');
    on(editor, 'ArrowUp', { alt: true });
    keys(editor, 'Enter');
    expect(editor.store.getState().toolState).toBe('aiming');
  });

  test('works on a wall face: across and up', () => {
    const { editor, id } = drawn();
    editor.foldUp({ wall: id.wall ?? Object.keys(editor.store.getState().plan.walls)[0]!, side: 'left' });
    editor.setActivePane('face');
    keys(editor, 'r', 'ArrowRight');
    expect(editor.store.getState().cursor?.pane).toBe('face');
    const n = Object.keys(editor.store.getState().plan.nodes).length;
    on(editor, 'Enter', { alt: true });
    figures(editor, 600);
    keys(editor, 'ArrowUp', 'Enter');
    const made = ends(editor).slice(n);
    expect(made).toHaveLength(2);
    expect(made[1]![2]! - made[0]![2]!).toBe(600);
    expect(made[1]!.slice(0, 2)).toEqual(made[0]!.slice(0, 2));
  });
});

describe('choosing and dragging by keys alone', () => {
  test('Enter chooses what lies under the cross, shift adds', () => {
    const { editor } = drawn();
    editor.setTool('select');
    keys(editor, 'ArrowRight');
    on(editor, 'ArrowRight', { ctrl: true });
    keys(editor, 'Enter');
    expect(editor.store.getState().selection).toHaveLength(1);
  });

  test('held with ctrl and Enter an arrow drags, Enter lets go as one step; Escape leaves nothing', () => {
    const editor = editorOf();
    editor.run('point.add', {
      kind: 'gas-meter',
      storey: 'ground',
      place: { on: 'storey', x: 3000, y: 0, angleDeg: 0 },
    });
    const [id] = Object.keys(editor.store.getState().plan.points);
    const x = () => {
      const place = editor.store.getState().plan.points[id!]?.place;
      return place?.on === 'storey' ? place.x : Number.NaN;
    };
    const over = (): void => {
      keys(editor, 'ArrowRight');
      editor.store.setState((s) => ({ cursor: s.cursor && { ...s.cursor, at: [3000, 40] } }));
    };
    over();
    on(editor, 'Enter', { ctrl: true });
    expect(editor.store.getState().cursor?.held).toBe(true);
    keys(editor, 'ArrowRight', 'ArrowRight', 'Escape');
    expect(x()).toBe(3000);
    expect(editor.store.getState().history.undo).toHaveLength(1);
    over();
    on(editor, 'Enter', { ctrl: true });
    keys(editor, 'ArrowRight', 'ArrowRight', 'Enter');
    expect(x()).toBe(3200);
    expect(editor.store.getState().history.undo).toHaveLength(2);
  });
});
