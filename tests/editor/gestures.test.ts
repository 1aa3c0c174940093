import { describe, expect, test } from 'vitest';
import { toolsInOrder } from '../../src/editor/tools/tools.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { danglingReferences } from '../../src/plan/references.ts';
import { drawn } from './drawn.ts';
import { editorOf, handOn, press } from './hand.ts';

const tools = toolsInOrder().map((t) => t.id);
/** Places over something for every tool: a pipe, a wall, the boiler, a corner, the bare floor. */
const places = ['1500,1500', '2000,0', '2000,2900', '1500,885', '3000,1500'];

describe.each(tools)('the %s tool', (tool) => {
  test.each(places)('leaves no trace when a second finger comes at %s', (place) => {
    const { editor } = drawn();
    const hand = handOn(editor, 'touch');
    editor.setTool(tool);
    const before = editor.store.getState();
    hand.play(`down ${place} move 2600,1900`);
    expect(editor.store.getState().plan).toBe(before.plan);
    hand.play('second move 2700,1900 lift up');
    const after = editor.store.getState();
    expect(after.plan).toBe(before.plan);
    expect(after.history).toEqual(before.history);
    expect(after.draft).toBeNull();
    expect(after.caught).toBeNull();
    expect(after.toolState).toBe(before.toolState);
  });

  test.each(places)('forgets a gesture whose pointer is lost at %s', (place) => {
    const { editor } = drawn();
    const hand = handOn(editor, 'touch');
    editor.setTool(tool);
    const before = editor.store.getState();
    hand.play(`down ${place} move 2600,1900 cancel`);
    const after = editor.store.getState();
    expect(after.plan).toBe(before.plan);
    expect(after.draft).toBeNull();
    expect(after.toolState).toBe(before.toolState);
  });

  test.each(places)('makes at most one step of a gesture, and leaves the plan alone till its end, at %s', (place) => {
    const { editor } = drawn();
    const hand = handOn(editor, 'touch');
    editor.setTool(tool);
    const { plan } = editor.store.getState();
    hand.play(`down ${place}`);
    for (const to of ['1800,1600', '2000,1700', '2200,1700']) {
      hand.play(`move ${to}`);
      expect(editor.store.getState().plan).toBe(plan);
      expect(editor.store.getState().history.undo).toEqual([]);
    }
    hand.play('up');
    const after = editor.store.getState();
    expect(after.history.undo.length).toBeLessThanOrEqual(1);
    expect(danglingReferences(after.plan)).toEqual([]);
    if (after.history.undo.length === 1) {
      editor.undo();
      expect(editor.store.getState().plan).toEqual(plan);
    }
  });
});

describe('state paths', () => {
  test('run: two taps and a second tap on the last place', () => {
    const editor = editorOf();
    const hand = handOn(editor);
    editor.setTool('run');
    hand.play('down 0,0 up down 1000,0 move 1000,0 up');
    press(editor, 'Enter');
    expect(hand.path).toEqual(['idle', 'starting', 'aiming', 'placing', 'aiming', 'idle']);
  });

  test('select: a tap, then a drag', () => {
    const { editor } = drawn();
    const hand = handOn(editor);
    hand.play('down 1500,885 up down 1500,885 move 1700,885 up');
    expect(hand.path).toEqual(['idle', 'pointing', 'idle', 'pointing', 'dragging', 'idle']);
  });

  test('tape: two taps measure and change nothing', () => {
    const { editor } = drawn();
    const hand = handOn(editor);
    editor.setTool('tape');
    const { plan } = editor.store.getState();
    hand.play('down 2500,1000 up move 2500,1500 down 2500,2000 up');
    expect(hand.path).toEqual(['idle', 'pulling', 'open', 'closing', 'read']);
    expect(editor.store.getState().draft?.labels[0]?.text).toBe('1000');
    expect(editor.store.getState().plan).toBe(plan);
  });
});

describe('the select tool', () => {
  const at = (editor: ReturnType<typeof editorOf>, node: string | undefined) => {
    const { plan } = editor.store.getState();
    const record = plan.nodes[node ?? ''];
    return record && nodePlace(plan, record)?.at;
  };

  test('chooses the run first, then the leg, and offers all that lies there', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    hand.tap(1500, 1500);
    expect(editor.store.getState().selection).toEqual([{ map: 'runs', id: id.gas }]);
    expect(editor.store.getState().candidates.map((c) => c.map)).toEqual(['runs', 'legs', 'rooms']);
    hand.tap(1500, 1500);
    expect(editor.store.getState().selection).toEqual([{ map: 'legs', id: id['gas.6'] }]);
    press(editor, 'Escape');
    expect(editor.store.getState().selection).toEqual([]);
  });

  test('chooses what stands on the wall before the wall, and the room last', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    hand.tap(2100, 2900);
    expect(editor.store.getState().selection).toEqual([{ map: 'points', id: id.boiler }]);
    hand.tap(3000, 1500);
    expect(editor.store.getState().selection).toEqual([{ map: 'rooms', id: id.kitchen }]);
    hand.tap(900, 0);
    expect(editor.store.getState().selection).toEqual([{ map: 'openings', id: id.door }]);
    hand.tap(3000, 0);
    expect(editor.store.getState().selection).toEqual([{ map: 'walls', id: id.south }]);
  });

  test('drags a leg across itself; the pipe stays square and joined', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    hand.play('down 1500,1500 move 1700,1530');
    const { draft } = editor.store.getState();
    expect(draft?.moved).toContain(id['gas.6']);
    expect(draft?.plan).not.toBeNull();
    hand.play('move 1803,1530 up');
    expect(at(editor, id['gas.5'])).toEqual({ x: 1800, y: 885, z: 2000 });
    expect(at(editor, id['gas.7'])).toEqual({ x: 1800, y: 2000, z: 2000 });
    expect(at(editor, id['gas.3'])).toEqual({ x: 675, y: 885, z: 2000 });
    expect(editor.store.getState().history.undo).toEqual(['move leg']);
  });

  test('a boiler slides along its wall, and its wall takes it along', () => {
    const { editor, id } = drawn();
    const hand = handOn(editor);
    hand.play('down 2000,2900 move 1500,2900 up');
    const place = () => editor.store.getState().plan.points[id.boiler ?? '']?.place;
    expect(place()).toMatchObject({ on: 'wall', wall: id.north, alongMm: 2500 });
    hand.play('down 3000,3000 move 3000,3200 up');
    const { plan } = editor.store.getState();
    expect(plan.walls[id.north ?? '']).toMatchObject({ a: { x: 4000, y: 3200 }, b: { x: 0, y: 3200 } });
    expect(plan.walls[id.east ?? '']).toMatchObject({ a: { x: 4000, y: 0 }, b: { x: 4000, y: 3200 } });
    expect(plan.walls[id.west ?? '']).toMatchObject({ a: { x: 0, y: 3200 }, b: { x: 0, y: 0 } });
    expect(place()).toMatchObject({ on: 'wall', alongMm: 2500 });
  });

  test('a drag back to where it began makes no step', () => {
    const { editor } = drawn();
    const hand = handOn(editor);
    hand.play('down 1500,1500 move 1700,1500 move 1500,1500 up');
    expect(editor.store.getState().history.undo).toEqual([]);
  });

  test('arrows nudge by 10, 100 with shift, 1 with alt, each one step', () => {
    const { editor, id } = drawn();
    editor.select([{ map: 'nodes', id: id['cold.3'] ?? '' }]);
    press(editor, 'ArrowUp');
    editor.key({ key: 'ArrowUp', ctrl: false, shift: true, alt: false });
    editor.key({ key: 'ArrowUp', ctrl: false, shift: false, alt: true });
    expect(at(editor, id['cold.3'])).toEqual({ x: 1000, y: 2611, z: 150 });
    expect(editor.store.getState().history.undo).toHaveLength(3);
  });

  test('Delete takes away what is chosen, and undo brings it and the choice back', () => {
    const { editor, id } = drawn();
    const { plan } = editor.store.getState();
    editor.select([{ map: 'runs', id: id.cold ?? '' }]);
    press(editor, 'Delete');
    expect(editor.store.getState().plan.runs[id.cold ?? '']).toBeUndefined();
    expect(Object.keys(editor.store.getState().plan.nodes)).toHaveLength(4);
    expect(editor.store.getState().selection).toEqual([]);
    editor.undo();
    expect(editor.store.getState().plan).toEqual(plan);
    expect(editor.store.getState().selection).toEqual([{ map: 'runs', id: id.cold }]);
  });

  test('after the work, surveyed pipe is marked to strip out instead', () => {
    const { editor, id } = drawn();
    editor.setCase({ option: 'A', when: 'before' });
    const free = (x: number) => ({
      at: 'free',
      storey: 'ground',
      x,
      y: -900,
      height: { from: 'floor', of: 'ground', mm: 90 },
    });
    const made = editor.run('run.start', {
      service: 'gas',
      joining: null,
      turns: 'elbow',
      tube: { kind: 'copper', size: null },
      path: [free(0), free(900)],
    });
    const run = made.ok ? (made.made[0] ?? '') : '';
    expect(editor.store.getState().plan.runs[run]?.option).toBeNull();
    editor.setCase({ option: 'A', when: 'after' });
    editor.run('things.delete', {
      things: [
        { map: 'runs', id: run },
        { map: 'runs', id: id.cold },
      ],
    });
    const { plan } = editor.store.getState();
    expect(plan.runs[run]).toBeDefined();
    expect(plan.options.A?.fates).toEqual({ [run]: 'strip' });
    expect(plan.runs[id.cold ?? '']).toBeUndefined();
  });

  test('a drag over the bare floor moves the paper', () => {
    const editor = editorOf();
    const hand = handOn(editor, 'touch');
    const { centre } = editor.store.getState().panes.plan.camera;
    hand.play('down 0,0 move 500,0 up');
    expect(editor.store.getState().panes.plan.camera.centre).not.toEqual(centre);
    expect(hand.path).toContain('panning');
  });
});
