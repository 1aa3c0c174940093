import { describe, expect, test } from 'vitest';
import { viewIndex } from '../../src/editor/hit/view-index.ts';
import type { SnapOptions } from '../../src/editor/snap/define-snap.ts';
import { snapTo } from '../../src/editor/snap/snap.ts';
import { snapsInOrder } from '../../src/editor/snap/snaps.ts';
import { connectionPlace } from '../../src/geometry/hosting.ts';
import { drawn } from './drawn.ts';
import { editorOf } from './hand.ts';

const TOLERANCE = 60;

function snapper(options: SnapOptions = {}) {
  const { editor, id } = drawn();
  const { plan, panes, chosen } = editor.store.getState();
  const index = viewIndex(plan, panes.plan.view, chosen)!;
  return { plan, id, at: (x: number, y: number, more = options) => snapTo(plan, index, [x, y], TOLERANCE, 50, more) };
}

describe('snaps', () => {
  test('go from what is aimed at to what is only near', () => {
    expect(snapsInOrder.map((s) => s.id)).toEqual([
      'connection',
      'body',
      'node',
      'leg',
      'openingEdge',
      'wallCorner',
      'rightAngle',
      'level',
      'roomCorner',
      'wallFace',
      'wallCentreline',
      'alignment',
      'grid',
    ]);
  });

  test('a tail of the service in hand is caught with its own height', () => {
    const { plan, id, at } = snapper();
    const tail = connectionPlace(plan, id.boiler!, 'gas')!.at;
    const pick = at(tail.x + 20, tail.y + 10, { service: 'gas' });
    expect(pick).toMatchObject({ source: 'connection', fixed: 'xyz', at: tail, word: 'gas of Boiler' });
    expect(at(tail.x + 20, tail.y + 10, { service: 'discharge' }).source).not.toBe('connection');
  });

  test('a corner before the leg it ends, and the leg where it is square to the last place', () => {
    const { id, at } = snapper();
    expect(at(1490, 890).target).toEqual({ is: 'node', node: id['gas.5'] });
    const square = at(1510, 1530, { from: { x: 2500, y: 1500, z: 50 } });
    expect(square).toMatchObject({ source: 'leg', at: { x: 1500, y: 1500, z: 2000 } });
    expect(square.target).toEqual({ is: 'leg', leg: id['gas.6'], alongMm: 615 });
  });

  test('where an upright hides two ends, the one at the height in hand is meant', () => {
    const { plan, id } = snapper();
    const index = viewIndex(plan, { kind: 'plan', storey: 'ground' }, { option: 'A', when: 'after' })!;
    const pick = snapTo(plan, index, [675, 885], TOLERANCE, 1990, { only: ['node', 'leg'] });
    expect(pick.target).toEqual({ is: 'node', node: id['gas.3'] });
    const half = snapTo(plan, index, [675, 885], TOLERANCE, 1500, { only: ['leg'] });
    expect(half).toMatchObject({
      at: { x: 675, y: 885, z: 1500 },
      target: { is: 'leg', leg: id['gas.2'], alongMm: 800 },
    });
  });

  test('the face of a wall, its middle and its corner', () => {
    const { id, at } = snapper({ only: ['wallFace', 'wallCentreline', 'wallCorner'] });
    expect(at(2503, 70)).toMatchObject({ source: 'wallFace', word: 'face of wall' });
    expect(at(2503, 70).at.y).toBeCloseTo(50, 9);
    expect(at(2503, 70).target).toEqual({ is: 'wall', wall: id.south, side: 'left' });
    expect(at(3990, 10)).toMatchObject({ source: 'wallCorner', at: { x: 4000, y: 0 }, word: 'end of wall' });
  });

  test('along a right angle lengths come out round, and its crossing with a wall face is caught', () => {
    const { at } = snapper({
      from: { x: 2000, y: 1000, z: 50 },
      way: [1, 0],
      only: ['rightAngle', 'wallFace', 'grid'],
    });
    expect(at(2617, 1020)).toMatchObject({ at: { x: 2600, y: 1000, z: 50 }, word: 'straight on' });
    const met = at(2010, 80);
    expect(met.word).toBe('right angle, face of wall');
    expect(met.at.x).toBeCloseTo(2000, 9);
    expect(met.at.y).toBeCloseTo(50, 9);
  });

  test('the way of the last leg is the frame, whatever way that is', () => {
    const way = [Math.SQRT1_2, Math.SQRT1_2] as const;
    const { at } = snapper({ from: { x: 2000, y: 1000, z: 50 }, way, only: ['rightAngle'] });
    const on = at(2300, 1320).at;
    expect(on.x - 2000).toBeCloseTo(on.y - 1000, 9);
  });

  test('in line with an earlier corner, and in line with two at once', () => {
    const { at } = snapper({
      earlier: [
        { x: 2225, y: 1400, z: 0 },
        { x: 2600, y: 1815, z: 0 },
      ],
      only: ['alignment', 'grid'],
    });
    expect(at(2240, 1810)).toMatchObject({ at: { x: 2225, y: 1815 }, word: 'in line, in line' });
  });

  test('round places where nothing else is near: 50, then 10', () => {
    const { plan, at } = snapper({ only: ['grid'] });
    expect(at(2531, 1233).at).toEqual({ x: 2550, y: 1250, z: 50 });
    const index = viewIndex(plan, { kind: 'plan', storey: 'ground' }, { option: 'A', when: 'after' })!;
    expect(snapTo(plan, index, [2531, 1233], 8, 50, {}).at).toEqual({ x: 2530, y: 1230, z: 50 });
    expect(snapTo(plan, index, [2534.3, 1234.7], 2, 50, {})).toMatchObject({
      source: 'free',
      at: { x: 2534.3, y: 1234.7 },
    });
  });

  test('what is being moved catches nothing', () => {
    const { id, at } = snapper();
    const pick = at(1490, 890, { without: new Set([id['gas.5']!, id['gas.4']!, id['gas.6']!]) });
    expect(pick.target).toBeNull();
  });

  test('pipe that is stripped out can be chosen but not joined', () => {
    const { editor } = drawn();
    editor.setCase({ option: 'A', when: 'before' });
    const free = (x: number) => ({
      at: 'free',
      storey: 'ground',
      x,
      y: -900,
      height: { from: 'floor', of: 'ground', mm: 50 },
    });
    const tube = { kind: 'copper', size: null };
    const made = editor.run('run.start', {
      service: 'gas',
      joining: null,
      turns: 'elbow',
      tube,
      path: [free(0), free(900)],
    });
    editor.setCase({ option: 'A', when: 'after' });
    editor.run('fate.set', { option: 'A', ids: [made.ok ? made.made[0] : ''], fate: 'strip' });
    const { plan, panes, chosen } = editor.store.getState();
    const index = viewIndex(plan, panes.plan.view, chosen)!;
    expect(snapTo(plan, index, [450, -900], TOLERANCE, 50, { only: ['leg', 'node'] }).target).toBeNull();
  });
});

describe('what a move looks at', () => {
  test('stays under 200 records with 3,000 runs drawn', () => {
    const editor = editorOf();
    const { plan } = editor.store.getState();
    const big = structuredClone(plan);
    for (let i = 0; i < 3000; i++) {
      const [x, y] = [(i % 60) * 1000, Math.floor(i / 60) * 1000];
      const id = `run${i}`;
      big.runs[id] = { id, service: 'gas', name: '', joining: null, turns: 'elbow', option: null };
      for (const [k, dx, dy] of [
        [0, 0, 0],
        [1, 700, 0],
        [2, 700, 600],
      ] as const) {
        const height = { from: 'floor', of: 'ground', mm: 50 } as const;
        const place = { on: 'storey', storey: 'ground', x: x + dx, y: y + dy, height } as const;
        big.nodes[`${id}.${k}`] = { id: `${id}.${k}`, place, turn: null, option: null };
      }
      for (const k of [1, 2]) {
        const tube = { kind: 'copper', size: '22x0.9' };
        const ends = { a: `${id}.${k - 1}`, b: `${id}.${k}` };
        big.legs[`${id}-${k}`] = {
          id: `${id}-${k}`,
          run: id,
          ...ends,
          tube,
          insulation: null,
          option: null,
          sureness: 'seen',
        };
      }
    }
    editor.restore(big, [], []);
    editor.setCamera('plan', { centre: [30000, 25000], mmPerPx: 10 });
    editor.setTool('run');
    const state = editor.store.getState();
    const index = viewIndex(state.plan, state.panes.plan.view, state.chosen)!;
    const mods = { shift: false, alt: false, ctrl: false, buttons: 0, pointerId: 1 };
    for (let i = 0; i < 50; i++) {
      const before = index.visited();
      editor.pointer({ type: 'move', pointerType: 'touch', pane: 'plan', x: 11 * i, y: 13 * i, time: i, ...mods });
      expect(index.visited() - before).toBeLessThanOrEqual(200);
    }
    expect(index.visited()).toBeGreaterThan(0);
    expect(viewIndex(state.plan, state.panes.plan.view, state.chosen), 'built once for a plan').toBe(index);
  });
});
