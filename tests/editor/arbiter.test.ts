import { describe, expect, test } from 'vitest';
import type { PointerInput } from '../../src/editor/editor-api.ts';
import { createArbiter } from '../../src/editor/input/arbiter.ts';

type Part = Partial<PointerInput>;

function rig() {
  const log: string[] = [];
  const arbiter = createArbiter({
    tool: (e) => log.push(`tool ${e.type}`),
    interrupt: () => log.push('interrupt'),
    cancel: () => log.push('cancel'),
    pan: (_pane, dx, dy) => log.push(`pan ${dx},${dy}`),
    pinch: (_pane, at, factor) => log.push(`pinch ${at} ${factor}`),
  });
  let time = 0;
  const send = (type: PointerInput['type'], pointerId: number, x: number, y: number, more: Part = {}): void => {
    time += 10;
    arbiter.pointer({
      type,
      pointerId,
      pointerType: 'touch',
      pane: 'plan',
      x,
      y,
      buttons: type === 'up' ? 0 : 1,
      shift: false,
      alt: false,
      ctrl: false,
      time,
      ...more,
    });
  };
  return { arbiter, log, send };
}

describe('the arbiter', () => {
  test('gives one finger to the tool', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0);
    send('move', 1, 5, 0);
    send('up', 1, 5, 0);
    expect(log).toEqual(['tool down', 'tool move', 'tool up']);
  });

  test('a second finger takes the gesture from the tool for good', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0);
    send('down', 2, 100, 0);
    send('move', 2, 200, 0);
    send('up', 1, 0, 0);
    send('move', 2, 210, 0);
    send('up', 2, 210, 0);
    expect(log).toEqual(['tool down', 'interrupt', 'pan 50,0', 'pinch 100,0 2', 'pan 10,0']);
    send('down', 1, 0, 0);
    expect(log.at(-1)).toBe('tool down');
  });

  test('back on one finger the paper goes on moving, and a finger put down again pinches', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0);
    send('down', 2, 100, 0);
    send('up', 2, 100, 0);
    send('move', 1, 0, 7);
    send('down', 3, 100, 7);
    send('move', 3, 100, 107);
    expect(log.filter((l) => l.startsWith('tool'))).toEqual(['tool down']);
    expect(log).toContain('pan 0,7');
    expect(log.at(-1)).toMatch(/^pinch/);
  });

  test('a lost pointer cancels', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0);
    send('cancel', 1, 0, 0);
    expect(log).toEqual(['tool down', 'cancel']);
  });

  test('a lost pointer after a second finger does not reach the tool again', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0);
    send('down', 2, 9, 0);
    send('cancel', 2, 9, 0);
    send('cancel', 1, 0, 0);
    expect(log).toEqual(['tool down', 'interrupt']);
  });

  test('while a pen is in use a hand on the glass only moves the paper', () => {
    const { log, send } = rig();
    send('move', 9, 0, 0, { pointerType: 'pen', buttons: 0 });
    send('down', 1, 0, 0);
    send('move', 1, 4, 4);
    send('up', 1, 4, 4);
    send('down', 9, 0, 0, { pointerType: 'pen' });
    expect(log).toEqual(['tool move', 'pan 4,4', 'tool down']);
  });

  test('the middle button, and the main one with the space bar, pan', () => {
    const { arbiter, log, send } = rig();
    send('down', 1, 0, 0, { pointerType: 'mouse', buttons: 4 });
    send('move', 1, 3, 0, { pointerType: 'mouse', buttons: 4 });
    send('up', 1, 3, 0, { pointerType: 'mouse' });
    arbiter.holdToPan(true);
    send('down', 1, 0, 0, { pointerType: 'mouse' });
    send('move', 1, 0, 2, { pointerType: 'mouse' });
    send('up', 1, 0, 2, { pointerType: 'mouse' });
    arbiter.holdToPan(false);
    send('down', 1, 0, 0, { pointerType: 'mouse' });
    expect(log).toEqual(['pan 3,0', 'pan 0,2', 'tool down']);
  });

  test('the right button is for nobody, and a hover is for the tool', () => {
    const { log, send } = rig();
    send('move', 1, 1, 1, { pointerType: 'mouse', buttons: 0 });
    send('down', 1, 1, 1, { pointerType: 'mouse', buttons: 2 });
    send('up', 1, 1, 1, { pointerType: 'mouse', buttons: 0 });
    expect(log).toEqual(['tool move']);
  });

  test('a window that loses the pointer gives the gesture up', () => {
    const { arbiter, log, send } = rig();
    send('down', 1, 0, 0);
    arbiter.reset();
    send('up', 1, 0, 0);
    expect(log).toEqual(['tool down', 'cancel']);
    expect(arbiter.state()).toBe('rest');
  });
});
