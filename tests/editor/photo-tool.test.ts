import { expect, test } from 'vitest';
import { editorOf, handOn } from './hand.ts';

function withPhoto() {
  const editor = editorOf();
  const place = { on: 'storey', x: 3000, y: 0, angleDeg: 0 } as const;
  const added = editor.run('point.add', { kind: 'boiler', storey: 'ground', place });
  const kept = editor.run('blob.set', { hash: 'h', kind: 'photo', mediaType: 'image/jpeg' });
  const [point, photo] = [added, kept].map((o) => (o.ok ? (o.made[0] ?? '') : ''));
  editor.resizePane('plan', 800, 600);
  editor.setCamera('plan', { centre: [2000, 0], mmPerPx: 10 });
  return { editor, hand: handOn(editor, 'touch'), point: point ?? '', photo: photo ?? '' };
}

test('a tap on the floor pins the photo in hand there, and is one step', () => {
  const { editor, hand, photo } = withPhoto();
  editor.setInHand({ photo });
  editor.setTool('photo');
  hand.tap(500, 700);
  const state = editor.store.getState();
  expect(state.plan.blobRefs[photo]?.pin).toMatchObject({ storey: 'ground', x: 500, y: 700 });
  expect(state).toMatchObject({ tool: 'select', selection: [{ map: 'blobRefs', id: photo }] });
  expect(state.inHand.photo).toBeNull();
  editor.undo();
  expect(editor.store.getState().plan.blobRefs[photo]?.pin).toBeUndefined();
});

test('a tap on a thing makes the photo one of it, and takes an older pin out', () => {
  const { editor, hand, photo, point } = withPhoto();
  editor.run('blob.pin', { blobRef: photo, to: { is: 'place', storey: 'ground', x: 1, y: 1 } });
  editor.setInHand({ photo });
  editor.setTool('photo');
  hand.tap(3000, -150);
  const pinned = editor.store.getState().plan.blobRefs[photo];
  expect(pinned?.on).toBe(point);
  expect(pinned && 'pin' in pinned).toBe(false);
  editor.run('point.delete', { point });
  expect(editor.store.getState().plan.blobRefs[photo]?.on).toBeNull();
});

test('the mark on the plan is chosen by a tap; with no photo in hand the tool says what to do', () => {
  const { editor, hand, photo } = withPhoto();
  editor.run('blob.pin', { blobRef: photo, to: { is: 'place', storey: 'ground', x: 500, y: 900 } });
  hand.tap(500, 900);
  expect(editor.store.getState().selection).toEqual([{ map: 'blobRefs', id: photo }]);
  editor.setTool('photo');
  const { revision } = editor.store.getState();
  hand.tap(100, 100);
  expect(editor.store.getState().revision).toBe(revision);
  expect(editor.store.getState().said?.text).toMatch(/^Take or choose a photo first/);
});
