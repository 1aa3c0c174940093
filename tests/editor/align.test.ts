import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { drawn } from './drawn.ts';

const RIGHT = { x: 1, y: 0, z: 0 };
const UP_SHEET = { x: 0, y: 1, z: 0 };
const UP = { x: 0, y: 0, z: 1 };

const at = (editor: Editor, node: string | undefined) => {
  const { plan } = editor.store.getState();
  const record = plan.nodes[node ?? ''];
  return record && nodePlace(plan, record)?.at;
};
const why = (editor: Editor): string => editor.store.getState().said?.text ?? '';

describe('aligning', () => {
  test('brings two legs to one line; the rest of the run follows square, and undo brings all back', () => {
    const { editor, id } = drawn();
    const before = editor.store.getState().plan;
    // The gas drops along x 1500, the cold along x 1000.
    const things = [
      { map: 'legs', id: id['gas.6'] },
      { map: 'runs', id: id.cold },
    ];
    expect(editor.run('things.align', { things, way: RIGHT, edge: 'most' }).ok).toBe(true);
    expect(at(editor, id['cold.1'])).toMatchObject({ x: 1500, y: 500 });
    expect(at(editor, id['gas.5'])).toMatchObject({ x: 1500, y: 885 });
    expect(editor.run('things.align', { things, way: RIGHT, edge: 'most' }).ok).toBe(true);
    expect(editor.store.getState().history.undo).toEqual(['align 2 things']);
    editor.undo();
    expect(editor.store.getState().plan).toEqual(before);
    expect(editor.run('things.align', { things, way: RIGHT, edge: 'least' }).ok).toBe(true);
    expect(at(editor, id['gas.5'])).toMatchObject({ x: 1000, y: 885 });
    expect(at(editor, id['gas.7'])).toMatchObject({ x: 1000, y: 2000 });
    expect(at(editor, id['gas.3'])).toMatchObject({ x: 675, y: 885 });
  });

  test('the middle lies between the two outermost, whatever they are made of', () => {
    const { editor, id } = drawn();
    const nodes = [id['gas.7'], id['cold.3']].map((n) => ({ map: 'nodes', id: n }));
    expect(editor.run('things.align', { things: nodes, way: UP_SHEET, edge: 'middle' }).ok).toBe(true);
    expect([at(editor, id['gas.7'])?.y, at(editor, id['cold.3'])?.y]).toEqual([2250, 2250]);
  });

  test('heights are made the same, and the uprights between take them up', () => {
    const { editor, id } = drawn();
    const things = [
      { map: 'legs', id: id['gas.6'] },
      { map: 'runs', id: id.cold },
    ];
    // The gas comes up out of its meter: lower than that it cannot go, and says so.
    const before = editor.store.getState().plan;
    expect(editor.run('things.align', { things, way: UP, edge: 'least' }).ok).toBe(false);
    expect(why(editor)).not.toBe('');
    expect(editor.store.getState().plan).toBe(before);
    expect(editor.run('things.align', { things, way: UP, edge: 'most' }).ok).toBe(true);
    expect([at(editor, id['gas.5'])?.z, at(editor, id['gas.7'])?.z, at(editor, id['cold.1'])?.z]).toEqual([
      2000, 2000, 2000,
    ]);
  });

  test('faces of walls lie in one line: a thick one and a thin one', () => {
    const { editor, id } = drawn();
    const made = editor.run('wall.add', {
      storey: 'ground',
      a: { x: 5000, y: 0 },
      b: { x: 5000, y: 2000 },
      thicknessMm: 300,
      construction: 'brick',
    });
    const thick = made.ok ? (made.made[0] ?? '') : '';
    const things = [id.east, thick].map((w) => ({ map: 'walls', id: w }));
    expect(editor.run('things.align', { things, way: RIGHT, edge: 'most' }).ok).toBe(true);
    const { walls } = editor.store.getState().plan;
    expect(walls[id.east ?? '']?.a.x).toBe(5100);
    expect(walls[thick]?.a.x).toBe(5000);
    expect(walls[id.south ?? '']?.b).toMatchObject({ x: 5100, y: 0 });
  });

  test('a wall that stands where it is to stand is not pulled aslant by the corner it makes', () => {
    const { editor, id } = drawn();
    const things = [id.west, id.south].map((w) => ({ map: 'walls', id: w }));
    expect(editor.run('things.align', { things, way: RIGHT, edge: 'least' }).ok).toBe(true);
    const { walls } = editor.store.getState().plan;
    // The face of the one lies 50 before the end of the other.
    expect([walls[id.west ?? '']?.a.x, walls[id.west ?? '']?.b.x]).toEqual([0, 0]);
    expect(walls[id.south ?? '']?.a.x).toBe(-50);
  });

  test('what hangs on a wall that runs another way is refused by name, and nothing moves', () => {
    const { editor, id } = drawn();
    const before = editor.store.getState().plan;
    const things = [id.boiler, id.meter].map((p) => ({ map: 'points', id: p }));
    expect(editor.run('things.align', { things, way: UP_SHEET, edge: 'least' }).ok).toBe(false);
    expect(why(editor)).toMatch(/^Boiler hangs on a wall that runs another way\./);
    expect(editor.store.getState().plan).toBe(before);
    expect(
      editor.run('things.align', { things: [things[0], { map: 'walls', id: id.east }], way: UP, edge: 'least' }).ok,
    ).toBe(false);
    expect(why(editor)).toMatch(/^Walls stand on their floor/);
  });
});

describe('several legs', () => {
  test('are lagged in one step, and bare again', () => {
    const { editor, id } = drawn();
    const legs = [id['gas.4'], id['gas.6'], id['cold.2']].filter((l) => editor.store.getState().plan.legs[l ?? '']);
    const insulation = { kind: 'foam', thicknessMm: 13 };
    expect(editor.run('legs.insulate', { legs, insulation }).ok).toBe(true);
    const { plan, history } = editor.store.getState();
    for (const leg of legs) expect(plan.legs[leg ?? '']?.insulation).toEqual(insulation);
    expect(history.undo).toEqual(['lag 13']);
    editor.run('legs.insulate', { legs, insulation: null });
    for (const leg of legs) expect(editor.store.getState().plan.legs[leg ?? '']?.insulation).toBeNull();
  });
});
