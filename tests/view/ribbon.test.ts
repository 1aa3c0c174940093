import { describe, expect, test } from 'vitest';
import type { RibbonBar } from '../../src/drawing/ribbon/ribbon-bars.ts';
import { ribbonBars } from '../../src/drawing/ribbon/ribbon-bars.ts';
import { buildNetwork } from '../../src/network/graph.ts';
import { aimAt, holdRun, raisedPlan } from '../../src/view/ribbon/held-run.ts';
import { fitScale } from '../../src/view/ribbon/ribbon-scale.ts';
import { barAt, slotsOf } from '../../src/view/ribbon/slots.ts';
import { demo } from '../drawing/demo.ts';
import { AFTER } from '../drawing/small-plan.ts';

const style = { ink: 'service:cold', pen: 0.7, dash: [], fit: true };
const bar = (run: string, z: number, chosen = false): RibbonBar => ({
  leg: `${run}-leg`,
  run,
  tag: run,
  letters: run,
  name: run,
  z,
  assumed: null,
  fallMm: 0,
  awayMm: 0,
  here: true,
  chosen,
  style,
});

const scale = fitScale(-250, 2750, 640, 14);
const y = (z: number): number => scale.y(z);

describe('slots of the ribbon', () => {
  test('every slot is a finger high, none lies over another, and no bar is lost', () => {
    const many = [150, 160, 210, 270, 400, 900, 1245, 2400, 2420].map((z, i) => bar(`r${i}`, z));
    const slots = slotsOf(many, y, null);
    expect(slots.flatMap((s) => s.bars)).toHaveLength(many.length);
    for (const s of slots) expect(s.height).toBeGreaterThanOrEqual(44);
    slots.slice(1).forEach((s, i) => {
      const over = slots[i];
      expect(s.top).toBeGreaterThanOrEqual((over?.top ?? 0) + (over?.height ?? 0) - 0.001);
    });
    for (const s of slots) {
      for (const b of s.bars) {
        expect(y(b.z)).toBeGreaterThanOrEqual(s.top);
        expect(y(b.z)).toBeLessThanOrEqual(s.top + s.height);
      }
    }
  });

  test('of several the chosen one is in hand, and before it the one last held', () => {
    const pair = [bar('a', 150), bar('b', 170, true), bar('c', 190)];
    expect(slotsOf(pair, y, null)[0]?.hand?.run).toBe('b');
    expect(slotsOf(pair, y, 'c')[0]?.hand?.run).toBe('c');
    expect(slotsOf([bar('a', 150), bar('c', 160)], y, null)[0]?.hand).toBeNull();
  });

  test('what the tab of the work height covers can be touched beside it', () => {
    const tab = [y(150) - 22, y(150) + 22] as const;
    const slots = slotsOf([bar('a', 140), bar('b', 160), bar('c', 270), bar('d', 400)], y, null, tab);
    expect(slots.flatMap((s) => s.bars)).toHaveLength(4);
    for (const s of slots) {
      expect(s.height).toBeGreaterThanOrEqual(44);
      expect(s.top >= tab[1] || s.top + s.height <= tab[0]).toBe(true);
    }
  });

  test('a press takes the nearest where it is plainly meant, else none', () => {
    const [slot] = slotsOf([bar('a', 150), bar('c', 350)], y, null);
    if (!slot) throw new Error('no slot');
    expect(barAt(slot, y, y(150), 14)?.run).toBe('a');
    expect(barAt(slot, y, (y(150) + y(350)) / 2, 14)).toBeNull();
  });
});

describe('a run held by its height', () => {
  const plan = demo('flat');
  const network = buildNetwork(plan, AFTER);
  const gas = ribbonBars(plan, network, { storey: 'B', at: null, run: null }).find((b) => b.run === 'B-g1');
  if (!gas) throw new Error('no gas');
  const floor = { label: 'floor', z: 0, height: { from: 'floor', of: 'B', mm: 0 } } as const;
  const ceiling = { label: 'ceiling', z: 2500, height: { from: 'ceiling', of: 'B', mm: 0 } } as const;
  const worktop = { label: 'worktop', z: 900, height: { from: 'floor', of: 'B', mm: 900 } } as const;
  const held = holdRun(plan, network, gas, [floor, worktop, ceiling], 0);
  if (!held) throw new Error('not held');

  test('its whole stretch goes along, and nothing else of the flat', () => {
    for (const { leg } of held.pieces) expect(held.moving.has(leg.id)).toBe(true);
    const raised = raisedPlan(plan, gas.leg, -100);
    expect(raised.ok).toBe(true);
  });

  test('it rests against a ceiling and on a floor with its outside, at a worktop with its middle', () => {
    expect(aimAt(held, 2478, 30)).toMatchObject({ z: 2486, caught: 'against the ceiling' });
    expect(aimAt(held, 20, 30)).toMatchObject({ z: 14, caught: 'on the floor' });
    expect(aimAt(held, 890, 30)).toMatchObject({ z: 900, caught: 'worktop' });
  });

  test('with nothing near it goes in tens off the floor', () => {
    expect(aimAt(held, 1503, 30)).toEqual({ z: 1500, height: null, caught: null });
    expect(aimAt(held, 2493, 0).caught).toBeNull();
  });

  test('just clear of what passes: the room between the outsides is that of the table', () => {
    const pass = {
      leg: 'x',
      run: 'x',
      name: 'cold 22',
      service: 'cold',
      at: { x: 0, y: 0 },
      of: gas.leg,
      low: 1989,
      high: 2011,
    };
    const near = { ...held, passing: [pass] };
    const over = aimAt(near, 2050, 30);
    const gap = held.gaps.gas ?? held.gaps.crossing ?? 0;
    expect(gap).toBeGreaterThan(0);
    expect(over.caught).toBe(`just clear over the cold 22, by ${gap}`);
    expect(over.z - held.radius - pass.high).toBeGreaterThanOrEqual(gap);
    expect(over.z - held.radius - pass.high).toBeLessThan(gap + 1);
  });
});
