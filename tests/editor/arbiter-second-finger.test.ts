import { readFileSync } from 'node:fs';
import { beforeAll, describe, expect, test } from 'vitest';
import type { Editor, EditorState, PointerInput } from '../../src/editor/editor-api.ts';
import { toPixels } from '../../src/editor/input/camera.ts';
import { loadLater } from '../../src/editor/later/load-later.ts';
import { LATER_TOOLS } from '../../src/editor/tools/later-tools.ts';
import { tools } from '../../src/editor/tools/tools.ts';
import { readPlan } from '../../src/files/format/read-plan.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { editorOf } from './hand.ts';
import { rngOf } from './rng.ts';

const read = readPlan(readFileSync(new URL('../../demo-plans/flat.plan.json', import.meta.url), 'utf8'));
if (read.kind !== 'ok') throw new Error('the flat cannot be read');
const flat: Plan = read.plan;

const ROUNDS = 40;
const KINDS = ['touch', 'touch', 'touch', 'mouse'] as const;

/** What must be as it was before the finger came down. */
const kept = (s: EditorState) => ({
  draft: s.draft,
  caught: s.caught,
  typed: s.typed,
  ask: s.ask,
  inHand: s.inHand,
  selection: s.selection,
  candidates: s.candidates,
  undo: s.history.undo,
});

function glass(editor: Editor) {
  let time = 0;
  return (
    type: PointerInput['type'],
    pointerId: number,
    [x, y]: readonly [number, number],
    more: Partial<PointerInput> = {},
  ): void => {
    time += 700;
    const buttons = type === 'down' || type === 'move' ? 1 : 0;
    const mods = { shift: false, alt: false, ctrl: false };
    const pane = editor.store.getState().panes.active;
    editor.pointer({ type, pointerId, pointerType: 'touch', pane, x, y, buttons, ...mods, time, ...more });
  };
}

/** Places that matter: ends of pipes, corners, and anywhere. */
function places(editor: Editor, random: () => number): readonly [number, number] {
  const { panes } = editor.store.getState();
  const pane = panes[panes.active] ?? panes.plan;
  const pick = <T>(all: readonly T[]): T | undefined => all[Math.floor(random() * all.length)];
  const place = pick(Object.values(flat.nodes))?.place;
  const wall = pick(Object.values(flat.walls));
  const at =
    random() < 0.4 && place && 'x' in place
      ? place
      : random() < 0.5 && wall
        ? random() < 0.5
          ? wall.a
          : wall.b
        : null;
  if (at) {
    const [x, y] = toPixels(pane, [at.x, at.y]);
    return [x + random() * 6 - 3, y + random() * 6 - 3];
  }
  return [random() * pane.width, random() * pane.height];
}

beforeAll(() => loadLater());

const ids = [...new Set([...tools.keys(), ...LATER_TOOLS.map((t) => t.id)])].sort();

describe.each(ids)('%s', (id) => {
  test.each(['second', 'cancel', 'blur'] as const)('a gesture ended by %s leaves no mark', (how) => {
    for (let round = 0; round < ROUNDS; round++) {
      const { below } = rngOf(round * 7919 + id.length * 31 + how.length);
      const random = (): number => below(1_000_000) / 1_000_000;
      const editor = editorOf(flat);
      editor.resizePane('plan', 1000, 700);
      editor.zoomToFit();
      if (random() < 0.25)
        editor.foldUp({ wall: Object.keys(flat.walls)[Math.floor(random() * 6)] ?? '', side: 'left' });
      editor.setTool(id);
      const { store } = editor;
      const send = glass(editor);
      for (let taps = Math.floor(random() * 4); taps > 0; taps--) {
        const at = places(editor, random);
        send('down', 1, at);
        send('up', 1, at);
      }
      const pointerType = how === 'second' ? 'touch' : (KINDS[Math.floor(random() * KINDS.length)] ?? 'touch');
      const before = store.getState();
      send('down', 1, places(editor, random), { pointerType });
      let at = places(editor, random);
      for (let moves = Math.floor(random() * 5); moves > 0; moves--) {
        at = places(editor, random);
        send('move', 1, at, { pointerType });
      }
      // Choosing moves the paper by itself over the empty floor, which is no mark.
      if (how === 'second') {
        send('down', 2, places(editor, random));
        for (let moves = Math.floor(random() * 5); moves > 0; moves--)
          send('move', 1 + Math.floor(random() * 2), places(editor, random));
        for (const finger of random() < 0.5 ? [1, 2] : [2, 1]) send('up', finger, places(editor, random));
      } else if (how === 'cancel') send('cancel', 1, at, { pointerType });
      else {
        editor.blur();
        send('move', 1, places(editor, random), { pointerType });
        send('up', 1, at, { pointerType });
      }
      const now = store.getState();
      expect(now.plan, `round ${round}`).toBe(before.plan);
      expect(kept(now), `round ${round}`).toEqual(kept(before));
      expect(editor.gesture()).toBe('rest');
    }
  });
});
