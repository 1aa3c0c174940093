import { describe, expect, test } from 'vitest';
import { pixelAt } from '../../src/geometry/trace-place.ts';
import { blank, editorOf, handOn } from './hand.ts';

const pixels = { width: 1000, height: 800 };

/** A page with a picture of 1000 by 800 pixels under it, 10 mm a pixel, its lower left at the datum. */
function withPicture() {
  const editor = editorOf(blank());
  const place = { x: 0, y: 0, mmPerPixel: 10, angleDeg: 0, opacity: 0.5, locked: false };
  const outcome = editor.run('blob.set', {
    hash: 'sha256-1',
    kind: 'trace',
    name: 'agent plan',
    mediaType: 'image/jpeg',
    on: 'ground',
    place,
    pixels,
  });
  if (!outcome.ok) throw new Error(outcome.why);
  const id = outcome.made[0] ?? '';
  return {
    editor,
    hand: handOn(editor),
    id,
    take(doing: 'move' | 'scale' | 'level' | 'square') {
      editor.setTool('trace');
      editor.setInHand({ trace: { blobRef: id, doing, taps: [] } });
    },
    place: () => {
      const found = editor.store.getState().plan.blobRefs[id]?.place;
      if (!found) throw new Error('the picture is gone');
      return found;
    },
    taps: () => editor.store.getState().inHand.trace?.taps ?? [],
  };
}

describe('a picture under the drawing', () => {
  test('is dragged, and put back by undo in one step', () => {
    const p = withPicture();
    p.take('move');
    p.hand.play('down 100,100 move 300,50 move 600,400 up');
    expect([p.place().x, p.place().y]).toEqual([500, 300]);
    expect(p.editor.store.getState().history.undo.at(-1)).toBe('move agent plan');
    p.editor.undo();
    expect([p.place().x, p.place().y]).toEqual([0, 0]);
  });

  test('is scaled by two taps and a length; the first tap stays where it was', () => {
    const p = withPicture();
    p.take('scale');
    p.hand.tap(1000, 1000);
    p.hand.tap(1000, 3000);
    expect(p.taps()).toHaveLength(2);
    const [a, b] = p.taps();
    const before = pixelAt(p.place(), pixels, { x: 1000, y: 1000 });
    p.editor.run('trace.scale', { blobRef: p.id, a, b, lengthMm: 1000 });
    expect(p.place().mmPerPixel).toBeCloseTo(5, 6);
    const after = pixelAt(p.place(), pixels, { x: 1000, y: 1000 });
    expect(after?.x).toBeCloseTo(before?.x ?? 0, 1);
    expect(after?.y).toBeCloseTo(before?.y ?? 0, 1);
  });

  test('is levelled by two taps', () => {
    const p = withPicture();
    p.take('level');
    p.hand.tap(0, 0);
    p.hand.tap(2000, 200);
    expect(p.place().angleDeg).toBeCloseTo(360 - 5.7106, 3);
  });

  test('is squared by four corners, and drawn over at the size that was told', () => {
    const p = withPicture();
    p.take('square');
    for (const [x, y] of [
      [1000, 1000],
      [2000, 1200],
      [1900, 3400],
      [1050, 3600],
    ] as const)
      p.hand.tap(x, y);
    expect(p.taps()).toHaveLength(4);
    const outcome = p.editor.run('trace.square', { blobRef: p.id, corners: p.taps(), widthMm: 762, heightMm: 1981 });
    expect(outcome.ok).toBe(true);
    const { square } = p.place();
    expect(pixelAt(p.place(), pixels, { x: 1762, y: 2981 })?.x).toBeCloseTo(square?.corners[2]?.x ?? 0, 3);
    expect(pixelAt(p.place(), pixels, { x: 1762, y: 2981 })?.y).toBeCloseTo(square?.corners[2]?.y ?? 0, 3);
  });

  test('four corners that make no rectangle are refused in words, and nothing is changed', () => {
    const p = withPicture();
    const before = p.place();
    const corners = [
      { x: 0, y: 0 },
      { x: 900, y: 900 },
      { x: 900, y: 0 },
      { x: 0, y: 900 },
    ];
    const outcome = p.editor.run('trace.square', { blobRef: p.id, corners, widthMm: 762, heightMm: 1981 });
    expect(outcome).toMatchObject({ ok: false, why: expect.stringMatching(/make no rectangle/) });
    expect(p.place()).toEqual(before);
  });

  test('a locked one is held fast until it is unlocked', () => {
    const p = withPicture();
    p.editor.run('trace.place', { blobRef: p.id, change: { locked: true } });
    p.take('move');
    p.hand.play('down 100,100 move 600,400 up');
    expect(p.place().x).toBe(0);
    expect(p.editor.store.getState().said?.text).toMatch(/locked/);
    expect(p.editor.run('trace.scale', { blobRef: p.id, a: { x: 0, y: 0 }, b: { x: 1, y: 1 }, lengthMm: 5 }).ok).toBe(
      false,
    );
    p.editor.run('trace.place', { blobRef: p.id, change: { locked: false } });
    p.hand.play('down 100,100 move 600,400 up');
    expect(p.place().x).toBe(500);
  });

  test('a tap given up leaves nothing', () => {
    const p = withPicture();
    p.take('scale');
    p.hand.tap(1000, 1000);
    p.editor.cancel();
    expect(p.taps()).toEqual([]);
    expect(p.editor.store.getState().history.undo).toHaveLength(1);
  });
});
