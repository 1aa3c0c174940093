import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { pointFrame } from '../../src/geometry/hosting.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { drawn } from './drawn.ts';
import { handOn, press } from './hand.ts';
import { figureOf, placeFigures, textAt } from './placed.ts';

const stateOf = (editor: Editor) => editor.store.getState();
const at = (editor: Editor, node: string | undefined) => {
  const { plan } = stateOf(editor);
  const record = plan.nodes[node ?? ''];
  return record && nodePlace(plan, record)?.at;
};
const type = (editor: Editor, digits: string): void => press(editor, ...digits.split(''));

/** Chooses a thing, taps its figure of that length and leaves it asked. */
function tapped(editor: Editor, ...[of, mm]: [Parameters<typeof figureOf>[1], number]): void {
  const figure = figureOf(editor, of, mm);
  handOn(editor, 'touch').tap(...textAt(editor, figure));
  expect(stateOf(editor).toolState).toBe('asking');
}

describe('a figure that is tapped', () => {
  test('asks with what it is now, and sets a leg: the rest of the run follows', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.gas ?? '' }]);
    tapped(editor, 'leg', 825);
    expect(stateOf(editor).ask).toMatchObject({ title: 'Gas leg', figure: '', unit: 'mm', enter: 'keep' });
    expect(stateOf(editor).ask?.says).toEqual(['It is 825 now.']);
    type(editor, '1000');
    expect([stateOf(editor).ask?.figure, stateOf(editor).typed]).toEqual(['1000', '1000']);
    press(editor, 'Enter');
    expect(at(editor, id['gas.5'])).toMatchObject({ x: 1675, y: 885 });
    expect(at(editor, id['gas.7'])).toMatchObject({ x: 1675, y: 2000 });
    const { history, ask, draft, typed, toolState, selection } = stateOf(editor);
    expect([history.undo, ask, draft, typed, toolState]).toEqual([['leg of 1000'], null, null, '', 'idle']);
    expect(selection).toEqual([{ map: 'runs', id: id.gas }]);
  });

  test('lets the other end move where there is a choice, and only there', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.cold ?? '' }]);
    tapped(editor, 'leg', 2000);
    const [keys] = stateOf(editor).ask?.rows ?? [];
    expect(keys?.map((k) => [k.label, k.on])).toEqual([
      ['upper end moves', true],
      ['lower end moves', false],
    ]);
    press(editor, 'end a');
    type(editor, '1500');
    press(editor, 'Enter');
    expect([at(editor, id['cold.1'])?.y, at(editor, id['cold.3'])?.y]).toEqual([1000, 2500]);
  });

  test('is given up by Escape without a mark, and the choice stays', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.gas ?? '' }]);
    const before = stateOf(editor);
    tapped(editor, 'leg', 825);
    type(editor, '99');
    press(editor, 'Escape');
    const after = stateOf(editor);
    expect([after.plan, after.ask, after.draft, after.typed]).toEqual([before.plan, null, null, '']);
    expect(after.selection).toEqual(before.selection);
    expect(after.history.undo).toEqual([]);
  });

  test('kept as it is makes no step', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'runs', id: id.gas ?? '' }]);
    tapped(editor, 'leg', 825);
    type(editor, '825');
    press(editor, 'Enter');
    expect([stateOf(editor).toolState, stateOf(editor).history.undo]).toEqual(['idle', []]);
  });

  test('says why it cannot be, and stays to be put right', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'openings', id: id.door ?? '' }]);
    const { plan } = stateOf(editor);
    tapped(editor, 'opening', 450);
    expect(stateOf(editor).ask?.title).toBe('Door, from the corner');
    type(editor, '3900');
    press(editor, 'Enter');
    expect(stateOf(editor).said).toMatchObject({
      refusal: true,
      text: 'The opening does not fit: the wall is 4000 long.',
    });
    expect([stateOf(editor).toolState, stateOf(editor).ask?.figure, stateOf(editor).plan]).toEqual([
      'asking',
      '3900',
      plan,
    ]);
    press(editor, 'Backspace', 'Backspace', 'Backspace', 'Backspace');
    type(editor, '1000');
    press(editor, 'Enter');
    // Told from the face of the wall at the corner: half a thickness in from the wall's end.
    expect(stateOf(editor).plan.openings[id.door ?? '']?.alongMm).toBe(1050);
  });

  test('sets an opening from its other side and by its width', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'openings', id: id.door ?? '' }]);
    tapped(editor, 'opening', 2650);
    type(editor, '2000');
    press(editor, 'Enter');
    expect(stateOf(editor).plan.openings[id.door ?? '']).toMatchObject({ alongMm: 1150, widthMm: 800 });
    tapped(editor, 'opening', 800);
    type(editor, '762');
    press(editor, 'Enter');
    expect(stateOf(editor).plan.openings[id.door ?? '']).toMatchObject({ alongMm: 1150, widthMm: 762 });
  });

  test('sets a thing on its wall from the corner, from either side', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'points', id: id.boiler ?? '' }]);
    const middle = () => {
      const { plan } = stateOf(editor);
      const point = plan.points[id.boiler ?? ''];
      return point && pointFrame(plan, point)?.origin.x;
    };
    // In the middle of 3900 both are the same: it is set off first.
    editor.run('point.move', { point: id.boiler, by: { x: -500, y: 0, z: 0 } });
    tapped(editor, 'point', 1450);
    type(editor, '1000');
    press(editor, 'Enter');
    expect(middle()).toBe(1050);
    tapped(editor, 'point', 2900);
    type(editor, '3000');
    press(editor, 'Enter');
    expect(middle()).toBe(950);
  });

  test('sets a wall, and the clear size between two: either of them moves', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'walls', id: id.south ?? '' }]);
    tapped(editor, 'wall', 4000);
    type(editor, '4200');
    press(editor, 'Enter');
    const east = () => stateOf(editor).plan.walls[id.east ?? ''];
    // The wall across its end goes whole: the room stays square.
    expect([east()?.a.x, east()?.b.x]).toEqual([4200, 4200]);
    editor.select([]);
    tapped(editor, 'clear', 4100);
    expect(stateOf(editor).ask?.title).toBe('Clear between walls');
    type(editor, '3000');
    press(editor, 'Enter');
    expect([east()?.a.x, east()?.b.x]).toEqual([3100, 3100]);
    tapped(editor, 'clear', 2900);
    press(editor, 'end a');
    type(editor, '3000');
    press(editor, 'Enter');
    const { walls } = stateOf(editor).plan;
    expect([walls[id.south ?? '']?.a.y, walls[id.north ?? '']?.a.y]).toEqual([-100, 3000]);
  });

  test('does the same on the face of a wall: along it and over the floor', () => {
    const { editor, id } = drawn();
    editor.foldUp({ wall: id.north ?? '', side: 'left' });
    editor.setActivePane('face');
    editor.resizePane('face', 800, 500);
    editor.setCamera('face', { centre: [2000, 1200], mmPerPx: 6 });
    editor.select([{ map: 'points', id: id.boiler ?? '' }]);
    tapped(editor, 'point', 1100);
    expect(stateOf(editor).ask?.title).toMatch(/base over floor$/);
    type(editor, '1300');
    press(editor, 'Enter');
    expect(stateOf(editor).plan.points[id.boiler ?? '']?.place.height).toMatchObject({ from: 'floor', mm: 1300 });
    editor.select([{ map: 'runs', id: id.gas ?? '' }]);
    expect(placeFigures(editor).every((f) => f.measures.of !== 'clear')).toBe(true);
  });
});

describe('where a figure is touched', () => {
  test('44 px across for a finger, and not where something drawn is nearer', () => {
    const { editor, id } = drawn();
    editor.select([]);
    const figure = figureOf(editor, 'clear', 3900);
    const tall = figure.halfPx[1];
    expect(tall).toBeLessThan(22);
    const hand = handOn(editor, 'touch');
    hand.tap(...textAt(editor, figure, [0, 21]));
    expect(stateOf(editor).toolState).toBe('asking');
    press(editor, 'Escape');
    hand.tap(...textAt(editor, figure, [0, 26]));
    expect(stateOf(editor).toolState).toBe('idle');
    // A mouse aims finer.
    handOn(editor, 'mouse').tap(...textAt(editor, figure, [0, 21]));
    expect(stateOf(editor).toolState).toBe('idle');
    editor.select([{ map: 'runs', id: id.cold ?? '' }]);
    const leg = figureOf(editor, 'leg', 2000);
    // On the pipe itself the pipe is meant, however near its figure stands.
    hand.tap(1000, textAt(editor, leg)[1]);
    expect(stateOf(editor).toolState).toBe('idle');
    expect(stateOf(editor).selection[0]?.map).toMatch(/runs|legs/);
  });

  test('a drag that begins on a figure is a drag', () => {
    const { editor } = drawn();
    const figure = figureOf(editor, 'clear', 3900);
    const [x, y] = textAt(editor, figure);
    const { centre } = stateOf(editor).panes.plan.camera;
    handOn(editor, 'touch').play(
      `down ${x.toFixed(3)},${y.toFixed(3)} move ${(x + 600).toFixed(3)},${y.toFixed(3)} up`,
    );
    expect(stateOf(editor).ask).toBeNull();
    expect(stateOf(editor).panes.plan.camera.centre).not.toEqual(centre);
  });

  test('another tap while it asks lets it go, and another tool puts it away', () => {
    const { editor, id } = drawn();
    tapped(editor, 'clear', 3900);
    handOn(editor, 'touch').tap(2000, 2950);
    expect([stateOf(editor).ask, stateOf(editor).toolState]).toEqual([null, 'idle']);
    expect(stateOf(editor).selection).toEqual([{ map: 'points', id: id.boiler }]);
    tapped(editor, 'clear', 3900);
    editor.setTool('tape');
    expect([stateOf(editor).ask, stateOf(editor).draft]).toEqual([null, null]);
  });
});
