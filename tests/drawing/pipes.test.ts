import { describe, expect, test } from 'vitest';
import { makeItem } from '../../src/catalogue/items.ts';
import type { Fragment, Item, LineItem, MarkItem } from '../../src/drawing/display-list.ts';
import { fragments } from '../../src/drawing/fragments.ts';
import { spreadMm } from '../../src/drawing/paint/spread.ts';
import { banksOf } from '../../src/drawing/pipes/banks.ts';
import { pipesInView } from '../../src/drawing/pipes/pipes-in-view.ts';
import { planPlane } from '../../src/drawing/pipes/plane.ts';
import { aliveIn } from '../../src/network/cases.ts';
import type { Plan } from '../../src/plan/plan.ts';
import { AFTER, BEFORE, ceilingVoid, node, PLAN_VIEW, page, room, run, stretch, wall } from './small-plan.ts';

const drawn = (plan: Plan, chosen: typeof AFTER | typeof BEFORE = AFTER): readonly Fragment[] =>
  fragments(plan, PLAN_VIEW, chosen);
const itemsOf = (all: readonly Fragment[], id: string): readonly Item[] =>
  all.filter((f) => f.id === id).flatMap((f) => f.items);
const lineOf = (all: readonly Fragment[], id: string): LineItem => {
  const found = itemsOf(all, id).find((i) => i.t === 'line');
  if (found?.t !== 'line') throw new Error(`no line ${id}`);
  return found;
};
const marks = (all: readonly Fragment[]): MarkItem[] =>
  all.flatMap((f) => f.items.flatMap((i) => (i.t === 'mark' ? [i] : [])));
const flags = (all: readonly Fragment[]): string[] =>
  all.flatMap((f) => f.wishes.flatMap((w) => (w.w === 'flag' ? [w.what] : [])));

describe('state is weight, sureness is a hollow line', () => {
  const plan = page();
  run(plan, 'n', [
    [0, 0, 100],
    [1000, 0, 100],
  ]);
  run(
    plan,
    'old',
    [
      [0, 500, 100],
      [1000, 500, 100],
    ],
    { option: null },
  );
  run(
    plan,
    'guess',
    [
      [0, 900, 100],
      [1000, 900, 100],
    ],
    { option: null, sureness: 'assumed' },
  );
  run(
    plan,
    'newGuess',
    [
      [0, 1200, 100],
      [1000, 1200, 100],
    ],
    { sureness: 'assumed' },
  );
  run(
    plan,
    'out',
    [
      [0, 1500, 100],
      [1000, 1500, 100],
    ],
    { option: null, service: 'cold' },
  );
  (plan.options.A as { fates: Record<string, string> }).fates = { out: 'strip' };
  const after = drawn(plan);

  test('new is thick, kept is thin', () => {
    expect(lineOf(after, 'n-1').style).toMatchObject({ ink: 'service:gas', pen: 0.9, dash: [] });
    expect(lineOf(after, 'old-1').style).toMatchObject({ pen: 0.5 });
  });
  test('assumed is hollow; new never is', () => {
    expect(lineOf(after, 'guess-1').style).toMatchObject({ pen: 1.15, core: 0.65 });
    expect(lineOf(after, 'newGuess-1').style.core).toBeUndefined();
  });
  test('strip out keeps its beat under a cross every 7 mm, and goes when it is switched off', () => {
    expect(lineOf(after, 'out-1').style).toMatchObject({ pen: 0.3, strike: 7, dash: [11, 1.3, 0.9, 1.3] });
    expect(fragments(plan, PLAN_VIEW, AFTER, { stripped: false }).some((f) => f.id === 'out-1')).toBe(false);
  });
  test('before, it is only there', () => {
    expect(lineOf(drawn(plan, BEFORE), 'out-1').style).toMatchObject({ pen: 0.4 });
    expect(drawn(plan, BEFORE).some((f) => f.id === 'n-1')).toBe(false);
  });
  test('an unseen stretch is hollow and unbroken, and says what it may be', () => {
    const p = page();
    run(
      p,
      'g',
      [
        [0, 0, 100],
        [1000, 0, 100],
      ],
      { option: null, service: 'cold' },
    );
    node(p, 'end', [4000, 0, 100]);
    stretch(p, 's', 'g', 'g.1', 'end');
    const all = drawn(p, BEFORE);
    expect(lineOf(all, 's').style).toMatchObject({ dash: [], pen: 1.15, core: 0.65 });
    const tag = all.find((f) => f.id === 's')?.wishes.find((w) => w.w === 'tag');
    expect(tag).toMatchObject({ text: 'C ? 3 to 5 m', ink: 'cantTell' });
  });
});

describe('where legs meet', () => {
  test('a corner is rounded and its legs leave room for it', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [1000, 0, 100],
      [1000, 400, 100],
    ]);
    const all = drawn(plan);
    expect(itemsOf(all, 'g.1')).toMatchObject([{ t: 'corner', at: [1000, 0], most: 200 }]);
    expect(lineOf(all, 'g-1').trim).toEqual([0, 200]);
    expect(lineOf(all, 'g-2').trim).toEqual([200, 0]);
  });
  test('a tee is a dot', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [1000, 0, 100],
      [2000, 0, 100],
    ]);
    run(plan, 'b', ['g.1', [1000, 800, 100]]);
    expect(itemsOf(drawn(plan), 'g.1')).toMatchObject([{ t: 'mark', mark: 'tee', at: [1000, 0] }]);
  });
  test('legs in line need no mark; a change of size is a reducer, narrow end to the smaller', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [1000, 0, 100],
      [2000, 0, 100],
    ]);
    expect(itemsOf(drawn(plan), 'g.1')).toEqual([]);
    const leg = plan.legs['g-1'];
    if (!leg) throw new Error('the run has a first leg');
    const narrow = {
      ...plan,
      legs: { ...plan.legs, 'g-1': { ...leg, tube: { kind: 'copper', size: '15x0.7' } } },
    } as const;
    const [mark] = itemsOf(drawn(narrow), 'g.1');
    expect(mark).toMatchObject({ mark: 'reducer' });
    expect(Math.abs(mark?.t === 'mark' ? mark.turnDeg : 0)).toBeCloseTo(180);
  });
  test('an end that leads nowhere yet has a bar', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 100],
      [1000, 0, 100],
    ]);
    expect(marks(drawn(plan)).map((m) => m.mark)).toEqual(['openEnd', 'openEnd']);
  });
});

describe('rises and drops', () => {
  test('up to the reader is a dot in a ring, away is a slant; the flag says the level', () => {
    const plan = page();
    run(
      plan,
      'g',
      [
        [0, 0, 500],
        [0, 0, 2400],
        [3000, 0, 2400],
        [3000, 0, 900],
      ],
      { size: '28x0.9' },
    );
    const all = drawn(plan);
    expect(marks(all).map((m) => [m.mark, m.at])).toEqual([
      ['rise', [0, 0]],
      ['drop', [3000, 0]],
    ]);
    expect(flags(all)).toEqual(['up 500 to 2400', 'down to 900']);
  });
  test('a drop of another size than its neighbours says it', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 2400],
      [1000, 0, 2400],
      [2000, 0, 2400],
    ]);
    run(plan, 'b', ['g.1', [1000, 0, 900]], { size: '15x0.7' });
    expect(flags(drawn(plan))).toEqual(['15 down to 900']);
  });
  test('several pieces straight up are one rise', () => {
    const plan = page();
    run(plan, 'g', [
      [0, 0, 500],
      [0, 0, 1200],
      [0, 0, 2400],
      [3000, 0, 2400],
    ]);
    const all = drawn(plan);
    expect(marks(all).filter((m) => m.mark === 'rise')).toHaveLength(1);
    expect(flags(all)).toEqual(['up 500 to 2400']);
  });
  test('a pipe that falls says how much in how far', () => {
    const plan = page();
    run(
      plan,
      'k',
      [
        [0, 0, 700],
        [980, 0, 655],
      ],
      { service: 'condensate', size: null },
    );
    const all = drawn(plan);
    expect(flags(all)).toEqual(['falls 45 in 980']);
    expect(marks(all).find((m) => m.mark.startsWith('wedge'))).toMatchObject({ at: [490, 0], turnDeg: 0 });
  });
});

describe('crossings', () => {
  const crossed = (zUnder: number) => {
    const plan = page();
    run(plan, 'a', [
      [0, 0, 1000],
      [2000, 0, 1000],
    ]);
    run(
      plan,
      'b',
      [
        [1200, -500, zUnder],
        [1200, 500, zUnder],
      ],
      { service: 'cold' },
    );
    return drawn(plan);
  };
  test('the lower line is broken where it passes behind', () => {
    const all = crossed(500);
    expect(lineOf(all, 'b-1').gaps).toEqual([{ at: [1200, 0] }]);
    expect(lineOf(all, 'a-1').gaps).toBeUndefined();
    expect(lineOf(crossed(1500), 'a-1').gaps).toEqual([{ at: [1200, 0] }]);
  });
  test('lines that meet at one level both go straight through', () => {
    const all = crossed(1010);
    expect(lineOf(all, 'b-1').gaps).toBeUndefined();
    expect(lineOf(all, 'a-1').gaps).toBeUndefined();
  });
});

describe('banks', () => {
  const nested = (): Plan => {
    const plan = page();
    run(
      plan,
      'f',
      [
        [0, 240, 150],
        [4150, 240, 150],
        [4150, -1600, 150],
      ],
      { service: 'heatingFlow' },
    );
    run(
      plan,
      'r',
      [
        [200, 240, 210],
        [4210, 240, 210],
        [4210, -1600, 210],
      ],
      { service: 'heatingReturn' },
    );
    run(
      plan,
      'h',
      [
        [100, 180, 270],
        [4130, 180, 270],
        [4130, -1600, 270],
      ],
      { service: 'hot' },
    );
    return plan;
  };
  const pipes = (plan: Plan) => pipesInView(plan, planPlane('S'), aliveIn(plan, AFTER), true);

  test('lines on one another are put in the order in which their corners nest', () => {
    const { banks } = banksOf(pipes(nested()));
    const across = banks.find((b) => Math.abs(b.members[0]?.along[0] ?? 0) > 0.9);
    // North is up: the return goes furthest before it turns south, so it lies outside.
    expect(across?.members.map((m) => m.legs[0]?.run)).toEqual(['h', 'f', 'r']);
  });

  test('spread, no two lines are nearer than 2.1 mm of paper, and corners stay joined', () => {
    const k = 50;
    const all = drawn(nested());
    const at = (id: string, end: 0 | 1) => {
      const line = lineOf(all, id);
      const [x, y] = line.pts[end] as [number, number];
      const [dx, dy] = spreadMm(line.spread?.[end], k);
      return [x + dx, y + dy] as const;
    };
    const rows = ['h-1', 'f-1', 'r-1'].map((id) => at(id, 1)[1]);
    expect((rows[1] as number) - (rows[0] as number)).toBeGreaterThanOrEqual(2.1 * k - 1e-6);
    expect((rows[2] as number) - (rows[1] as number)).toBeGreaterThanOrEqual(2.1 * k - 1e-6);
    for (const r of ['h', 'f', 'r']) {
      const [a, b] = [at(`${r}-1`, 1), at(`${r}-2`, 0)];
      expect(a[0]).toBeCloseTo(b[0]);
      expect(a[1]).toBeCloseTo(b[1]);
    }
  });

  test('says how many, at what heights, once', () => {
    expect(flags(drawn(nested())).filter((f) => f.startsWith('bank'))).toEqual(['bank of 3 at 150, 210, 270']);
  });

  test('what stands in a line moves with it', () => {
    const plan = nested();
    plan.items.v = makeItem('isolation-valve', { id: 'v', node: 'f.1', option: 'A' });
    const all = drawn(plan);
    const mark = itemsOf(all, 'v')[0] as MarkItem;
    const line = lineOf(all, 'f-1');
    expect(spreadMm(mark.spread, 50)).toEqual(spreadMm(line.spread?.[1], 50));
  });

  test('never spread on a wall face', () => {
    const plan = nested();
    wall(plan, 'w', [0, 300], [5000, 300]);
    const face = fragments(plan, { kind: 'face', wall: 'w', side: 'right' }, AFTER);
    const lines = face.flatMap((f) => f.items.flatMap((i) => (i.t === 'line' && f.map === 'legs' ? [i] : [])));
    expect(lines.length).toBeGreaterThan(2);
    expect(lines.every((l) => l.spread === undefined)).toBe(true);
  });

  test('beside a wall a bank is spread into the room', () => {
    const plan = room(page());
    run(plan, 'a', [
      [500, 2980, 150],
      [3500, 2980, 150],
    ]);
    run(
      plan,
      'b',
      [
        [500, 2940, 150],
        [3500, 2940, 150],
      ],
      { service: 'cold' },
    );
    const line = lineOf(drawn(plan), 'a-1');
    expect(spreadMm(line.spread?.[0], 50)[1]).toBeCloseTo(0);
    expect(spreadMm(lineOf(drawn(plan), 'b-1').spread?.[0], 50)[1]).toBeCloseTo(-65);
  });
});

describe('pipes in a void', () => {
  const said = (z: number) => {
    const plan = page();
    ceilingVoid(plan, 'v');
    run(plan, 'g', [
      [0, 500, z],
      [3000, 500, z],
    ]);
    return flags(drawn(plan)).filter((f) => f.includes('batten'));
  };
  test('the flag says over, through or under', () => {
    expect(said(2300)).toEqual(['G at 2300, over the battens']);
    expect(said(2200)).toEqual(['G at 2200, through the battens']);
    expect(said(2155)).toEqual(['G at 2155, under the battens']);
  });
  test('under the ceiling there is nothing to say', () => {
    expect(said(2000)).toEqual([]);
  });
});
