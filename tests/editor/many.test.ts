import { describe, expect, test } from 'vitest';
import type { Editor, PointerInput } from '../../src/editor/editor-api.ts';
import { toPixels } from '../../src/editor/input/camera.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { drawn } from './drawn.ts';
import { handOn, press } from './hand.ts';

const stateOf = (editor: Editor) => editor.store.getState();
const ids = (editor: Editor): string[] => stateOf(editor).selection.map((s) => s.id);

/** A pointer with shift held, from place to place in mm. */
function shifted(editor: Editor, ...places: readonly (readonly [number, number])[]): void {
  const send = (type: PointerInput['type'], at: readonly [number, number], time: number): void => {
    const [x, y] = toPixels(stateOf(editor).panes.plan, at);
    const buttons = type === 'up' ? 0 : 1;
    const keys = { shift: true, alt: false, ctrl: false };
    editor.pointer({ type, pointerId: 1, pointerType: 'mouse', pane: 'plan', x, y, buttons, ...keys, time });
  };
  const [first, ...rest] = places;
  if (!first) return;
  send('down', first, 0);
  for (const [i, to] of rest.entries()) send('move', to, 20 * (i + 1));
  send('up', places.at(-1) ?? first, 500);
}

describe('several by a finger', () => {
  test('taps add and take away until it is done; the bare floor takes nothing', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor, 'touch');
    hand.tap(2000, 2900);
    press(editor, 'several');
    expect(stateOf(editor).toolState).toBe('several');
    hand.tap(3000, 0);
    hand.tap(1000, 1500);
    expect(ids(editor)).toEqual([id.boiler, id.south, id.cold]);
    hand.tap(3000, 0);
    expect(ids(editor)).toEqual([id.boiler, id.cold]);
    hand.tap(6000, 6000);
    expect(ids(editor)).toEqual([id.boiler, id.cold]);
    press(editor, 'several');
    expect(stateOf(editor).toolState).toBe('idle');
    expect(ids(editor)).toEqual([id.boiler, id.cold]);
    hand.tap(3000, 0);
    expect(ids(editor)).toEqual([id.south]);
  });

  test('Escape ends it first, and lets go of what is chosen after that', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.gas ?? '' }]);
    press(editor, 'several', 'Escape');
    expect([stateOf(editor).toolState, ids(editor)]).toEqual(['idle', [id.gas]]);
    press(editor, 'Escape');
    expect(ids(editor)).toEqual([]);
  });

  test('where legs are chosen, a tap on a pipe takes its leg', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'legs', id: id['gas.6'] ?? '' }]);
    press(editor, 'several');
    handOn(editor, 'touch').tap(1000, 1500);
    expect(stateOf(editor).selection).toEqual([
      { map: 'legs', id: id['gas.6'] },
      { map: 'legs', id: id['cold.2'] },
    ]);
  });

  test('a drag over anything else draws a box, and takes all it touches: a run only where all of it is touched', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor, 'touch');
    press(editor, 'several');
    const { plan } = stateOf(editor);
    hand.play('down 1200,1200 move 900,1500');
    expect(stateOf(editor).toolState).toBe('boxing');
    expect(stateOf(editor).draft?.lines).toMatchObject([{ ink: 'accent' }]);
    expect(stateOf(editor).selection).toEqual([]);
    // Over the cold pipe, and across the upright middle leg of the gas.
    hand.play('move 1600,1300 up');
    expect(stateOf(editor).draft).toBeNull();
    expect(new Set(ids(editor))).toEqual(new Set([id['gas.6']]));
    hand.play('down 800,300 move 1200,1800 up');
    expect(new Set(ids(editor))).toEqual(new Set([id['gas.6'], id.cold, id['gas.4']]));
    expect([stateOf(editor).plan, stateOf(editor).history.undo]).toEqual([plan, []]);
  });

  test('a box is the same whichever way it is drawn, and never takes the room it lies in', () => {
    const taken = (script: string): ReadonlySet<string> => {
      const { editor } = drawn();
      press(editor, 'several');
      handOn(editor, 'touch').play(script);
      return new Set(stateOf(editor).selection.map((s) => `${s.map} ${s.id}`));
    };
    const one = taken('down 3500,2000 move 1800,3200 up');
    expect(one).toEqual(taken('down 1800,3200 move 3500,2000 up'));
    expect([...one].map((s) => s.split(' ')[0]).sort()).toEqual(['points', 'walls']);
  });

  test('a drag of what is chosen moves all of it in one step', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor, 'touch');
    editor.select([
      { map: 'runs', id: id.cold ?? '' },
      { map: 'points', id: id.boiler ?? '' },
    ]);
    press(editor, 'several');
    hand.play('down 1000,1500 move 1300,1500 up');
    const { plan, history, toolState } = stateOf(editor);
    const node = plan.nodes[id['cold.1'] ?? ''];
    expect(node && nodePlace(plan, node)?.at).toMatchObject({ x: 1300, y: 500 });
    expect(plan.points[id.boiler ?? '']?.place).toMatchObject({ alongMm: 1700 });
    expect([history.undo, toolState]).toEqual([['move 2 things'], 'several']);
  });

  test('a second finger or a lost pointer takes the box away without a mark', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.cold ?? '' }]);
    press(editor, 'several');
    const before = stateOf(editor);
    for (const end of ['second lift up', 'cancel']) {
      handOn(editor, 'touch').play(`down 1800,2400 move 3500,3200 ${end}`);
      const after = stateOf(editor);
      expect([after.selection, after.draft, after.toolState]).toEqual([before.selection, null, 'several']);
    }
  });
});

describe('several by a mouse', () => {
  test('shift and a tap adds and takes away; shift and a drag draws a box, from over a wall too', () => {
    const { editor, id } = drawn();
    handOn(editor).tap(3000, 0);
    shifted(editor, [1000, 1500]);
    expect(ids(editor)).toEqual([id.south, id.cold]);
    shifted(editor, [3000, 0]);
    expect(ids(editor)).toEqual([id.cold]);
    const { plan } = stateOf(editor);
    shifted(editor, [3990, 2500], [3000, 2800], [1800, 3040]);
    expect(new Set(ids(editor))).toEqual(new Set([id.cold, id.boiler, id.north, id.east]));
    expect(stateOf(editor).plan).toBe(plan);
  });
});

describe('nudges of one thing and of several', () => {
  test('go up and down in height by their step, and by 50 with both keys held', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'points', id: id.boiler ?? '' }]);
    const mm = () => stateOf(editor).plan.points[id.boiler ?? '']?.place.height.mm;
    press(editor, 'PageUp');
    expect(mm()).toBe(1110);
    editor.key({ key: 'PageDown', ctrl: false, shift: true, alt: false });
    expect(mm()).toBe(1010);
    editor.key({ key: 'PageUp', ctrl: false, shift: true, alt: true });
    expect(mm()).toBe(1060);
    editor.key({ key: 'ArrowRight', ctrl: false, shift: true, alt: true });
    expect(stateOf(editor).plan.points[id.boiler ?? '']?.place).toMatchObject({ alongMm: 1950 });
    expect(stateOf(editor).history.undo).toHaveLength(4);
  });
});
