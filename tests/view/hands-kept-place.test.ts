import { afterEach, beforeEach, describe, expect, test, vi } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { screen } from '../../src/view/app/screen.ts';
import { inHandWords } from '../../src/view/bench/in-hand-words.ts';
import { takeKeptLook } from '../../src/view/hands/kept-look.ts';
import { placeOf, readPlace, writePlace } from '../../src/view/hands/kept-place.ts';
import { livingInHand, putPlace } from '../../src/view/hands/put-place.ts';
import { editorOf, handOn } from '../editor/hand.ts';

const shelf = new Map<string, string>();

beforeEach(() => {
  shelf.clear();
  const storage = {
    getItem: (key: string) => shelf.get(key) ?? null,
    setItem: (key: string, value: string) => void shelf.set(key, value),
    removeItem: (key: string) => void shelf.delete(key),
  };
  // Its keys are found as own properties, as in a page.
  vi.stubGlobal(
    'localStorage',
    new Proxy(storage, {
      ownKeys: () => [...shelf.keys()],
      getOwnPropertyDescriptor: () => ({ enumerable: true, configurable: true }),
    }),
  );
});
afterEach(() => vi.unstubAllGlobals());

/** A run of cold water that has been begun and is not ended, looked at from near. */
function left(): Editor {
  const editor = editorOf();
  const hand = handOn(editor, 'touch');
  editor.setTool('run');
  editor.setInHand({ service: 'cold', height: { from: 'floor', of: 'ground', mm: 2100 } });
  hand.play('down 0,0 up down 2000,0 up down 2000,1500 up');
  editor.setCamera('plan', { centre: [1234, 567], mmPerPx: 3 });
  return editor;
}

const keptOf = (editor: Editor) => {
  writePlace('plan', placeOf(editor.store.getState(), screen.getState(), 1));
  const place = readPlace('plan');
  if (!place) throw new Error('nothing kept');
  return place;
};

describe('a job that is opened again', () => {
  test('has its camera, tool and hand, and the run goes on from its open end', () => {
    const before = left();
    const place = keptOf(before);
    const again = editorOf(before.store.getState().plan);
    putPlace(again, place);
    const now = again.store.getState();
    const was = before.store.getState();
    expect([now.tool, now.toolState, now.inHand]).toEqual(['run', 'aiming', was.inHand]);
    expect(now.inHand.goesOn).not.toBeNull();
    expect(now.panes.plan.camera).toEqual({ centre: [1234, 567], mmPerPx: 3 });
    expect([takeKeptLook(again, 'plan'), takeKeptLook(again, 'plan'), takeKeptLook(again, 'face')]).toEqual([
      true,
      false,
      false,
    ]);
    expect(inHandWords(now)).toEqual(['Cold run goes on, 15', 'tap its end or the next corner']);
    expect(now.said?.text).toBe('Cold run goes on: tap its end or the next corner.');

    handOn(again, 'touch').tap(4000, 1500);
    const { plan } = again.store.getState();
    expect(Object.keys(plan.runs)).toHaveLength(1);
    expect(Object.keys(plan.legs)).toHaveLength(Object.keys(was.plan.legs).length + 1);
  });

  test('does not take up an end that was laid on from, or is gone', () => {
    const before = left();
    const place = keptOf(before);
    const { plan } = before.store.getState();
    const without = { ...plan, nodes: {}, legs: {}, runs: {} };
    const again = editorOf(without);
    putPlace(again, { ...place, selection: [{ map: 'runs', id: 'gone' }] });
    const now = again.store.getState();
    expect([now.tool, now.toolState, now.inHand.goesOn, now.selection]).toEqual(['run', 'idle', null, []]);
    const corner = { ...place, inHand: { ...place.inHand, goesOn: Object.keys(plan.nodes)[1] ?? '' } };
    const other = editorOf(plan);
    putPlace(other, corner);
    expect([other.store.getState().toolState, other.store.getState().inHand.goesOn]).toEqual(['idle', null]);
  });

  test('opens as it is where the floor, the case, the tool or the whole place makes no sense', () => {
    const before = left();
    const place = keptOf(before);
    const again = editorOf(before.store.getState().plan);
    const fresh = again.store.getState();
    putPlace(again, {
      ...place,
      storey: 'attic',
      chosen: { option: 'Z', when: 'after' },
      tool: 'hammer',
      face: { wall: 'gone', side: 'left', camera: place.camera },
    });
    const now = again.store.getState();
    expect([now.tool, now.chosen, now.panes]).toEqual([fresh.tool, fresh.chosen, fresh.panes]);
    expect(() => putPlace(again, JSON.parse('{"form":1,"page":7}'))).not.toThrow();
    shelf.set('kickset.place.plan', '{"form":99}');
    expect(readPlace('plan')).toBeNull();
    shelf.set('kickset.place.plan', 'not a place');
    expect(readPlace('plan')).toBeNull();
  });

  test('what is in hand is held to what there is', () => {
    const editor = left();
    const { plan, inHand } = editor.store.getState();
    const odd = {
      ...inHand,
      service: 'steam',
      pointKind: 'anvil',
      height: { from: 'voidTop', of: 'gone', mm: 0 } as const,
      joist: { void: 'gone', index: 2 },
      photo: 'gone',
    };
    const now = editorOf(plan).store.getState().inHand;
    expect(livingInHand(plan, now, odd)).toMatchObject({
      service: now.service,
      pointKind: now.pointKind,
      height: now.height,
      joist: null,
      photo: null,
    });
  });
});

test('only so many jobs are remembered, the one left longest ago goes first', () => {
  const state = editorOf().store.getState();
  for (let i = 0; i < 45; i++) writePlace(`job${i}`, placeOf(state, screen.getState(), 1000 + i));
  expect(shelf.size).toBe(40);
  expect(readPlace('job4')).toBeNull();
  expect(readPlace('job5')?.at).toBe(1005);
});
