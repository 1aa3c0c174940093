import { describe, expect, test } from 'vitest';
import type { Editor } from '../../src/editor/editor-api.ts';
import { nodePlace } from '../../src/geometry/places.ts';
import { capsuleGap } from '../../src/geometry/segments.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import { COPPER_15, COPPER_22, house } from '../network/house.ts';
import { editorOf, handOn, press } from './hand.ts';

/** A gas pipe of 22 along x at 1000, and a cold one of 15 across it in the middle, `gap` lower. */
function crossed(lower = 0, more: { coldLagging?: number } = {}): Plan {
  const h = house().run('gas', 'gas', { option: 'o' }).run('cold', 'cold', { option: 'o' });
  h.node('g0', [0, 0, 1000], { option: 'o' }).node('g1', [2000, 0, 1000], { option: 'o' });
  h.node('c0', [1000, -1000, 1000 - lower], { option: 'o' }).node('c1', [1000, 1000, 1000 - lower], { option: 'o' });
  const insulation = more.coldLagging === undefined ? null : { kind: 'foam', thicknessMm: more.coldLagging };
  h.leg('g', 'gas', 'g0', 'g1', { option: 'o', tube: COPPER_22 });
  h.leg('c', 'cold', 'c0', 'c1', { option: 'o', tube: COPPER_15, insulation });
  return h.plan;
}

function at(plan: Plan): Editor {
  const editor = editorOf(plan);
  editor.setCase({ option: 'o', when: 'after' });
  editor.setStorey('s');
  editor.setCamera('plan', { centre: [1000, 0], mmPerPx: 1 });
  editor.setTool('step');
  return editor;
}

const state = (editor: Editor) => editor.store.getState();
const placeOf = (plan: Plan, id: string): Xyz => nodePlace(plan, plan.nodes[id]!)!.at;
const lineOf = (plan: Plan, run: string): Xyz[] => {
  const legs = Object.values(plan.legs).filter((l) => l.run === run);
  const nodes = new Set(legs.flatMap((l) => [l.a, l.b]));
  return [...nodes].map((n) => placeOf(plan, n)).sort((p, q) => p.x - q.x || p.y - q.y);
};
/** Least distance between the bodies of two runs, lagging included. */
function gapOf(plan: Plan, lagging = 0): number {
  const legs = (run: string, radiusMm: number) =>
    Object.values(plan.legs)
      .filter((l) => l.run === run)
      .map((l) => ({ a: placeOf(plan, l.a), b: placeOf(plan, l.b), radiusMm }));
  return Math.min(...legs('gas', 11).flatMap((g) => legs('cold', 7.5 + lagging).map((c) => capsuleGap(g, c).gapMm)));
}

describe('a drag from where pipes cross', () => {
  test('draws a passover that just clears the other pipe, and says over what', () => {
    const editor = at(crossed());
    const hand = handOn(editor);
    hand.play('down 1000,0 move 1000,30');
    expect(state(editor).caught).toBe('over the cold 15');
    expect(state(editor).draft?.labels[0]?.text).toMatch(/^44 over, travel 62, \d+ long$/);
    hand.play('move 1000,50 up');
    const { plan, history } = state(editor);
    expect(history.undo).toEqual(['passover']);
    expect(Object.values(plan.legs).filter((l) => l.run === 'gas')).toHaveLength(5);
    expect(gapOf(plan)).toBeGreaterThanOrEqual(25);
    expect(gapOf(plan)).toBeLessThan(26);
    expect(lineOf(plan, 'gas').map((p) => p.z)).toEqual([1000, 1000, 1044, 1044, 1000, 1000]);
    expect(lineOf(plan, 'gas').every((p) => p.y === 0)).toBe(true);
    editor.undo();
    expect(Object.keys(state(editor).plan.legs)).toEqual(['g', 'c']);
  });

  test('is of the pipe the hand goes square away from', () => {
    const editor = at(crossed());
    handOn(editor).play('down 1000,0 move 1040,0 up');
    const { plan } = state(editor);
    expect(Object.values(plan.legs).filter((l) => l.run === 'cold')).toHaveLength(5);
    expect(Object.values(plan.legs).filter((l) => l.run === 'gas')).toHaveLength(1);
  });

  test('counts lagging, and goes under where that is in hand', () => {
    const editor = at(crossed(0, { coldLagging: 13 }));
    editor.setInHand({ step: { kind: 'passover', goes: 'under', angleDeg: 45 } });
    handOn(editor).play('down 1000,0 move 1000,30 up');
    const { plan } = state(editor);
    expect(gapOf(plan, 13)).toBeGreaterThanOrEqual(25);
    expect(gapOf(plan, 13)).toBeLessThan(26);
    expect(Math.min(...lineOf(plan, 'gas').map((p) => p.z))).toBe(1000 - 57);
  });

  test('takes less where the other pipe already lies lower', () => {
    const editor = at(crossed(20));
    handOn(editor).play('down 1000,0 move 1000,30 up');
    expect(Math.max(...lineOf(state(editor).plan, 'gas').map((p) => p.z))).toBe(1024);
  });

  test('goes under where there is no room above', () => {
    const plan = crossed();
    plan.storeys.s!.ceilingMm = 1030;
    const editor = at(plan);
    handOn(editor).play('down 1000,0 move 1000,30 up');
    expect(Math.min(...lineOf(state(editor).plan, 'gas').map((p) => p.z))).toBe(956);
  });

  test('goes as far as it is drawn where that is further', () => {
    const editor = at(crossed());
    handOn(editor).play('down 1000,0 move 1000,300 up');
    expect(Math.max(...lineOf(state(editor).plan, 'gas').map((p) => p.z))).toBe(1300);
  });

  test('of a set lays the pipe on past what lies across', () => {
    const editor = at(crossed());
    editor.setInHand({ step: { kind: 'set', goes: 'over', angleDeg: 90 } });
    handOn(editor).play('down 1000,0 move 1000,30 up');
    const { plan } = state(editor);
    expect(gapOf(plan)).toBeGreaterThanOrEqual(25);
    expect(placeOf(plan, 'g1').z).toBe(1044);
    expect(placeOf(plan, 'g0').z).toBe(1000);
  });

  test('says when a size is not known', () => {
    const plan = crossed();
    plan.legs.c = { ...plan.legs.c!, tube: { kind: 'copper', size: null } };
    const editor = at(plan);
    handOn(editor).play('down 1000,0 move 1000,30');
    expect(state(editor).caught).toBe('over the cold ?: a size is not known');
  });

  test('a second finger leaves no mark', () => {
    const editor = at(crossed());
    handOn(editor).play('down 1000,0 move 1000,60 second 1200,0 lift up');
    expect(state(editor).history.undo).toEqual([]);
    expect(state(editor).draft).toBeNull();
  });
});

describe('a drag where nothing lies across', () => {
  test('goes aside as far as the hand, in round steps', () => {
    const editor = at(crossed());
    handOn(editor).play('down 500,0 move 500,-83 up');
    const line = lineOf(state(editor).plan, 'gas');
    expect(Math.min(...line.map((p) => p.y))).toBe(-85);
    expect(line[0]).toEqual({ x: 0, y: 0, z: 1000 });
    expect(line.at(-1)).toEqual({ x: 2000, y: 0, z: 1000 });
  });

  test('takes digits typed on the way', () => {
    const editor = at(crossed());
    const hand = handOn(editor);
    hand.play('down 500,0 move 500,-83');
    press(editor, '4', '0');
    hand.play('up');
    expect(Math.min(...lineOf(state(editor).plan, 'gas').map((p) => p.y))).toBe(-40);
  });

  test('a kick stands near the end it was pressed by, which goes where it is free', () => {
    const editor = at(crossed());
    editor.setInHand({ step: { kind: 'kick', goes: 'aside', angleDeg: 45 } });
    handOn(editor).play('down 1850,0 move 1850,20 up');
    const line = lineOf(state(editor).plan, 'gas');
    expect(line).toEqual([
      { x: 0, y: 0, z: 1000 },
      { x: 1905, y: 0, z: 1000 },
      { x: 1925, y: 20, z: 1000 },
      { x: 2000, y: 20, z: 1000 },
    ]);
  });

  test('a swan neck goes out and back near the end', () => {
    const editor = at(crossed());
    editor.setInHand({ step: { kind: 'swanNeck', goes: 'aside', angleDeg: 45 } });
    handOn(editor).play('down 1800,0 move 1800,30 up');
    const line = lineOf(state(editor).plan, 'gas');
    expect(line.map((p) => p.y)).toEqual([0, 0, 30, 30, 0, 0]);
    expect(line[4]!.x).toBe(1925);
  });

  test('says what to press where there is no pipe', () => {
    const editor = at(crossed());
    handOn(editor).tap(300, 600);
    expect(state(editor).said?.text).toContain('Press on the pipe');
  });
});

describe('a tap asks on the pad', () => {
  test('offers the least, and every figure and way by a key', () => {
    const editor = at(crossed());
    const hand = handOn(editor);
    editor.select([{ map: 'runs', id: 'gas' }]);
    hand.tap(1000, 0);
    const { ask } = state(editor);
    expect(ask?.rows[0]?.map((k) => k.label)).toEqual(['Set', 'Passover', 'Kick', 'Swan neck']);
    expect(ask?.rows[1]?.map((k) => k.label)).toEqual(['over', 'under', 'left', 'right']);
    expect(ask?.says.join(' ')).toContain('44 over');
    expect(ask?.enter).toBe('lay it');
    press(editor, 'way:down', 'angle:90', '6', '0');
    expect(state(editor).ask).toMatchObject({ figure: '60' });
    press(editor, 'figure:over', '1', '2', '0', 'Enter');
    const line = lineOf(state(editor).plan, 'gas');
    const corners = line.map((p) => `${p.x} at ${p.z}`).sort();
    expect(corners).toEqual(
      ['0 at 1000', '940 at 1000', '940 at 940', '1060 at 940', '1060 at 1000', '2000 at 1000'].sort(),
    );
    expect(state(editor).ask).toBeNull();
    expect(state(editor).history.undo).toEqual(['passover']);
  });

  test('asks of the other pipe, of the other side, and gives up without a mark', () => {
    const editor = at(crossed());
    handOn(editor).tap(1000, 0);
    press(editor, 'other', 'kind:set', 'flip');
    expect(state(editor).ask?.rows[3]?.find((k) => k.key === 'flip')?.on).toBe(true);
    press(editor, 'Escape');
    expect(state(editor)).toMatchObject({ ask: null, draft: null, toolState: 'idle' });
    expect(state(editor).history.undo).toEqual([]);
  });

  test('a refusal is said on the pad, and nothing can be laid', () => {
    const editor = at(crossed());
    handOn(editor).tap(1000, 0);
    press(editor, 'figure:over', '9', '9', '9', '9');
    expect(state(editor).ask?.says[0]).toContain('no room');
    expect(state(editor).ask?.enter).toBeNull();
    press(editor, 'Enter');
    expect(state(editor).history.undo).toEqual([]);
  });

  test('30 degrees are offered where the run is bent', () => {
    const plan = crossed();
    const labels = (editor: Editor) => state(editor).ask?.rows[2]?.map((k) => k.label);
    const elbows = at(plan);
    handOn(elbows).tap(500, 0);
    expect(labels(elbows)).not.toContain('30 degrees');
    const bent = at({ ...plan, runs: { ...plan.runs, gas: { ...plan.runs.gas!, turns: 'bend' } } });
    handOn(bent).tap(500, 0);
    expect(labels(bent)).toContain('30 degrees');
  });
});

describe('joists and walls that lie across', () => {
  test('a joist is passed over by its depth, the pipe and what counts as touching', () => {
    const plan = crossed();
    plan.voids.v = {
      id: 'v',
      storey: 's',
      kind: 'floor',
      name: '',
      outline: [
        { x: -500, y: -500 },
        { x: 2500, y: -500 },
        { x: 2500, y: 500 },
        { x: -500, y: 500 },
      ],
      holes: [],
      bottom: { from: 'floor', of: 's', mm: 800 },
      top: { from: 'floor', of: 's', mm: 1300 },
      joists: {
        wayDeg: 90,
        centresMm: 400,
        first: { x: 200, y: 0 },
        depthMm: 175,
        breadthMm: 50,
        spanMm: null,
        kind: 'sawn',
        bottom: { from: 'floor', of: 's', mm: 900 },
        exceptions: [],
      },
      bearings: [],
      ventilated: null,
      option: null,
      sureness: 'seen',
    } as unknown as Plan['voids'][string];
    const editor = at(plan);
    const hand = handOn(editor);
    hand.play('down 600,0 move 600,40');
    expect(state(editor).caught).toBe('over the joist');
    hand.play('up');
    // Top of the timber at 1075, then half of 22 and 3 clear.
    expect(Math.max(...lineOf(state(editor).plan, 'gas').map((p) => p.z))).toBe(1089);
  });

  test('the end of a wall is gone round', () => {
    const plan = crossed();
    plan.walls.w = {
      id: 'w',
      storey: 's',
      a: { x: 400, y: -60 },
      b: { x: 400, y: 900 },
      thicknessMm: 100,
      construction: 'block',
      heightMm: null,
      option: null,
      sureness: 'seen',
    } as unknown as Plan['walls'][string];
    const editor = at(plan);
    const hand = handOn(editor);
    hand.play('down 400,0 move 400,-40');
    expect(state(editor).caught).toBe('right of the wall');
    hand.play('up');
    expect(Math.min(...lineOf(state(editor).plan, 'gas').map((p) => p.y))).toBe(-74);
  });
});

describe('on the face of a wall', () => {
  test('up is up: the hand draws a passover over a pipe that comes out of the wall', () => {
    const plan = crossed();
    plan.walls.w = {
      id: 'w',
      storey: 's',
      a: { x: -500, y: 80 },
      b: { x: 2500, y: 80 },
      thicknessMm: 100,
      construction: 'block',
      heightMm: null,
      option: null,
      sureness: 'seen',
    } as unknown as Plan['walls'][string];
    const editor = at(plan);
    editor.foldUp({ wall: 'w', side: 'right' });
    editor.setActivePane('face');
    editor.setCamera('face', { centre: [1500, 1000], mmPerPx: 1 });
    handOn(editor).play('down 1500,1000 move 1500,1030');
    expect(state(editor).caught).toBe('over the cold 15');
    handOn(editor).play('up');
    editor.cancel();
    expect(state(editor).draft).toBeNull();
  });
});
