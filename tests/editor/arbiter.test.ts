import { describe, expect, test } from 'vitest';
import type { PointerInput } from '../../src/editor/editor-api.ts';
import { createArbiter, type HandTold } from '../../src/editor/input/arbiter.ts';

type Part = Partial<PointerInput>;

function rig(told: Partial<HandTold> = {}) {
  const log: string[] = [];
  const arbiter = createArbiter(
    {
      tool: (e) => log.push(`tool ${e.type}`),
      interrupt: () => log.push('interrupt'),
      pan: (_pane, dx, dy) => log.push(`pan ${dx},${dy}`),
      pinch: (_pane, at, factor) => log.push(`pinch ${at} ${factor}`),
    },
    () => ({ pen: 'auto', gloves: false, ...told }),
  );
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
  const wait = (ms: number): void => {
    time += ms;
  };
  return { arbiter, log, send, wait };
}

const PEN: Part = { pointerType: 'pen' };
const HOVER: Part = { pointerType: 'pen', buttons: 0 };
const MOUSE: Part = { pointerType: 'mouse' };

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
    expect(log).toEqual(['tool down', 'interrupt']);
    send('move', 1, 5, 0);
    expect(log).toHaveLength(2);
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
    const { log, send, wait } = rig();
    send('move', 9, 0, 0, HOVER);
    wait(1000);
    send('down', 1, 0, 0);
    send('move', 1, 4, 4);
    send('up', 1, 4, 4);
    send('down', 9, 0, 0, PEN);
    send('up', 9, 0, 0, PEN);
    wait(60_001);
    send('down', 1, 0, 0);
    expect(log).toEqual(['tool move', 'pan 4,4', 'tool down', 'tool up', 'tool down']);
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

  test('a window that loses the pointer gives the gesture up, and the finger is of no account until it lifts', () => {
    const { arbiter, log, send } = rig();
    send('down', 1, 0, 0);
    arbiter.reset();
    send('move', 1, 9, 0);
    send('up', 1, 9, 0);
    expect(log).toEqual(['tool down', 'interrupt']);
    expect(arbiter.state()).toBe('rest');
    send('down', 1, 0, 0);
    expect(log.at(-1)).toBe('tool down');
  });

  test('a lift that was never heard leaves nothing stuck', () => {
    const { arbiter, log, send } = rig();
    send('down', 1, 0, 0, MOUSE);
    send('move', 1, 5, 0, { ...MOUSE, buttons: 0 });
    expect(log).toEqual(['tool down', 'interrupt', 'tool move']);
    expect(arbiter.state()).toBe('rest');
    send('down', 2, 0, 0);
    send('down', 2, 5, 5);
    expect(log.slice(3)).toEqual(['tool down', 'interrupt', 'tool down']);
    send('up', 2, 5, 5);
    expect(arbiter.state()).toBe('rest');
  });

  test('the main button let go while another is held ends the gesture', () => {
    const { arbiter, log, send } = rig();
    send('down', 1, 0, 0, { ...MOUSE, buttons: 1 });
    send('move', 1, 2, 0, { ...MOUSE, buttons: 3 });
    send('move', 1, 2, 0, { ...MOUSE, buttons: 2 });
    send('move', 1, 4, 0, { ...MOUSE, buttons: 2 });
    send('up', 1, 4, 0, MOUSE);
    expect(log).toEqual(['tool down', 'tool move', 'tool up']);
    expect(arbiter.state()).toBe('rest');
  });

  test('fingers in two panes neither draw nor pinch', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0);
    send('down', 2, 0, 0, { pane: 'face' });
    send('move', 2, 50, 0, { pane: 'face' });
    expect(log).toEqual(['tool down', 'interrupt']);
  });
});

describe('pen', () => {
  test('where the pen draws, fingers move the paper from the first touch on', () => {
    const { log, send } = rig({ pen: 'pen' });
    send('down', 1, 0, 0);
    send('move', 1, 3, 0);
    send('up', 1, 3, 0);
    send('down', 9, 0, 0, PEN);
    expect(log).toEqual(['pan 3,0', 'tool down']);
  });

  test('where fingers draw too, a pen that was seen takes nothing from them', () => {
    const { log, send, wait } = rig({ pen: 'fingers' });
    send('down', 9, 0, 0, PEN);
    send('up', 9, 0, 0, PEN);
    wait(1000);
    send('down', 1, 0, 0);
    expect(log).toEqual(['tool down', 'tool up', 'tool down']);
  });

  test('its side button moves the paper', () => {
    const { log, send } = rig();
    send('down', 9, 0, 0, { ...PEN, buttons: 2 });
    send('move', 9, 0, 6, { ...PEN, buttons: 2 });
    expect(log).toEqual(['pan 0,6']);
  });

  test.each(['auto', 'pen', 'fingers'] as const)('a hand that comes down with the pen is left out (%s)', (pen) => {
    const { arbiter, log, send } = rig({ pen });
    send('move', 9, 0, 0, HOVER);
    send('down', 1, 50, 50);
    send('down', 9, 0, 0, PEN);
    send('down', 2, 60, 50);
    send('move', 2, 70, 50);
    send('move', 9, 9, 0, PEN);
    send('up', 9, 9, 0, PEN);
    send('move', 1, 55, 50);
    send('up', 1, 55, 50);
    send('up', 2, 70, 50);
    expect(log).toEqual(['tool move', 'tool down', 'tool move', 'tool up']);
    expect(arbiter.state()).toBe('rest');
  });

  test('a hand that lay there first loses to the pen', () => {
    const { log, send } = rig();
    send('down', 1, 50, 50);
    send('move', 1, 53, 50);
    send('down', 9, 0, 0, PEN);
    send('move', 1, 60, 50);
    send('move', 9, 5, 0, PEN);
    send('up', 1, 60, 50);
    send('up', 9, 5, 0, PEN);
    expect(log).toEqual(['tool down', 'tool move', 'interrupt', 'tool down', 'tool move', 'tool up']);
  });

  test('nor does a hand that was moving the paper hold the pen up', () => {
    const { log, send } = rig({ pen: 'pen' });
    send('down', 1, 0, 0);
    send('down', 2, 100, 0);
    send('down', 9, 50, 50, PEN);
    send('up', 9, 50, 50, PEN);
    expect(log).toEqual(['tool down', 'tool up']);
  });
});

describe('a palm', () => {
  test('is left out by its breadth, and does not take the gesture from a finger', () => {
    const { log, send } = rig();
    send('down', 1, 0, 0, { contactPx: 30 });
    send('down', 2, 300, 300, { contactPx: 160 });
    send('move', 2, 320, 300, { contactPx: 170 });
    send('up', 2, 320, 300);
    send('up', 1, 0, 0);
    expect(log).toEqual(['tool down', 'tool up']);
  });

  test('that was a fingertip when it came loses its gesture when it is laid down', () => {
    const { arbiter, log, send } = rig();
    send('down', 1, 0, 0, { contactPx: 40 });
    send('move', 1, 2, 0, { contactPx: 140 });
    send('move', 1, 9, 0, { contactPx: 150 });
    expect(log).toEqual(['tool down', 'interrupt']);
    expect(arbiter.state()).toBe('rest');
    send('down', 2, 0, 0, { contactPx: 30 });
    send('up', 1, 9, 0);
    send('up', 2, 0, 0);
    expect(log.slice(2)).toEqual(['tool down', 'tool up']);
  });

  test('is wider than a finger in a glove', () => {
    const bare = rig();
    const gloved = rig({ gloves: true });
    for (const { send } of [bare, gloved]) send('down', 1, 0, 0, { contactPx: 130 });
    expect(bare.log).toEqual([]);
    expect(gloved.log).toEqual(['tool down']);
  });

  test('at the rim is the hand that holds the tablet', () => {
    const { log, send } = rig();
    send('down', 1, 2, 400, { rimPx: 2 });
    send('down', 2, 300, 300, { rimPx: 300 });
    send('up', 2, 300, 300);
    send('up', 1, 2, 400);
    expect(log).toEqual(['tool down', 'tool up']);
  });
});
