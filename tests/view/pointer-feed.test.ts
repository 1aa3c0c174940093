import { describe, expect, test } from 'vitest';
import type { PointerInput } from '../../src/editor/editor-api.ts';
import { createPointerFeed, type FrameClock } from '../../src/view/stage/pointer-feed.ts';

function stage() {
  const given: string[] = [];
  let wanted: (() => void) | null = null;
  let asked = 0;
  const clock: FrameClock = {
    request(call) {
      wanted = call;
      asked += 1;
      return asked;
    },
    cancel() {
      wanted = null;
    },
  };
  const feed = createPointerFeed((e) => given.push(`${e.type}${e.pointerId}@${e.x}`), clock);
  const send = (type: PointerInput['type'], x: number, pointerId = 1): void =>
    feed.push({
      type,
      pointerId,
      pointerType: 'touch',
      pane: 'plan',
      x,
      y: 0,
      buttons: 1,
      shift: false,
      alt: false,
      ctrl: false,
      time: x,
    });
  const frame = (): void => {
    const call = wanted;
    wanted = null;
    call?.();
  };
  return { feed, send, frame, given, asked: () => asked, waits: () => wanted !== null };
}

describe('pointer events on their way to the editor', () => {
  test('moves of a frame become their last, one for each finger', () => {
    const s = stage();
    s.send('move', 1);
    s.send('move', 2);
    s.send('move', 7, 2);
    s.send('move', 3);
    expect(s.given).toEqual([]);
    expect(s.asked()).toBe(1);
    s.frame();
    expect(s.given).toEqual(['move1@3', 'move2@7']);
  });

  test('down, up and cancel come at once, after the moves before them', () => {
    const s = stage();
    s.send('down', 0);
    s.send('move', 4);
    s.send('move', 5);
    s.send('up', 6);
    expect(s.given).toEqual(['down1@0', 'move1@5', 'up1@6']);
    expect(s.waits()).toBe(false);
  });

  test('a move after a frame asks for another frame', () => {
    const s = stage();
    s.send('move', 1);
    s.frame();
    s.send('move', 2);
    s.frame();
    expect(s.given).toEqual(['move1@1', 'move1@2']);
    expect(s.asked()).toBe(2);
  });

  test('stopped, it gives nothing more', () => {
    const s = stage();
    s.send('move', 1);
    s.feed.stop();
    s.frame();
    expect(s.given).toEqual([]);
  });
});
