import { describe, expect, test } from 'vitest';
import { evaluate } from '../../../src/engine/evaluate.ts';
import { type ExamplePlan, example } from '../../../src/engine/example.ts';
import { joisted } from '../../../src/engine/rules/structure/joist-examples.ts';
import type { Plan } from '../../../src/plan/plan.ts';
import type { Void } from '../../../src/plan/records/building.ts';
import type { HeightRef } from '../../../src/plan/records/parts.ts';
import type { Row } from '../../../src/report/section.ts';

const AFTER = { option: 'A', when: 'after' } as const;
const datum = (mm: number): HeightRef => ({ from: 'datum', of: null, mm });
const section = (plan: Plan, id: string) => evaluate(plan, AFTER).sections.find((s) => s.id === id);
const figureOf = (rows: readonly Row[] | undefined, label: string): number | undefined => {
  const row = rows?.find((r) => 'label' in r && r.label === label);
  if (row?.kind === 'fact') return row.figure?.value ?? undefined;
  return row?.kind === 'sum' ? (row.result?.value ?? undefined) : undefined;
};

/** A box in a corner, so wide along x and so far out along y, with upright pipes at places along x. */
function boxed(wide: number, out: number, pipes: readonly (readonly [string, number, string, number?])[]): ExamplePlan {
  const e = example();
  const at = (x: number, y: number) => ({ x, y });
  const space: Void = {
    id: 'box',
    storey: 'ground',
    name: 'Corner box',
    kind: 'boxing',
    outline: [at(0, 0), at(wide, 0), at(wide, out), at(0, out)],
    holes: [],
    bottom: datum(0),
    top: datum(2400),
    joists: null,
    bearings: [],
    ventilated: true,
    mayBeCut: null,
    option: null,
    sureness: 'seen',
  };
  e.plan.voids.box = space;
  for (const [service, x, size, insulationMm] of pipes) {
    const stops = [
      [x, out / 2, 0],
      [x, out / 2, 2400],
    ] as const;
    e.run(`${service}-${x}`, service, stops, { size, ...(insulationMm === undefined ? {} : { insulationMm }) });
  }
  return e;
}

describe('boxing', () => {
  const three = [
    ['cold', 140, '15x0.7'],
    ['gas', 20, '22x0.9'],
    ['heatingFlow', 80, '28x0.9', 13],
  ] as const;

  test('takes the pipes in the order they stand in, whatever order they were drawn in', () => {
    const rows = section(boxed(200, 100, three).plan, 'boxing')?.rows;
    expect(rows?.flatMap((r) => (r.kind === 'fact' ? [r.label] : []))).toEqual([
      'Gas 22',
      'Heating flow 28',
      'Cold 15',
    ]);
    expect(figureOf(rows, 'Smallest inside, along the wall')).toBe(166);
    expect(figureOf(rows, 'Smallest inside, out from the wall')).toBe(79);
  });

  test('a box drawn smaller than that is to be looked at', () => {
    expect(section(boxed(200, 100, three).plan, 'boxing')?.state).toBe('pass');
    expect(section(boxed(160, 100, three).plan, 'boxing')?.state).toBe('check');
    expect(section(boxed(200, 70, three).plan, 'boxing')?.state).toBe('check');
  });

  test('a pipe nobody read is left out and named, and room enough is then not told', () => {
    const plan = boxed(200, 100, three).plan;
    for (const leg of Object.values(plan.legs))
      if (leg.run.startsWith('cold')) leg.tube = { kind: 'copper', size: null };
    const found = section(plan, 'boxing');
    expect(found?.state).toBe('cantTell');
    expect(found?.rows.some((r) => r.kind === 'assumed' && r.say.startsWith('Cold'))).toBe(true);
  });

  test('pipes that lie along in a box are stacked', () => {
    const e = boxed(2000, 150, []);
    const space = e.plan.voids.box;
    if (space) space.top = datum(200);
    e.run(
      'low',
      'hot',
      [
        [100, 60, 40],
        [1900, 60, 40],
      ],
      { size: '15x0.7' },
    );
    e.run(
      'high',
      'cold',
      [
        [100, 60, 120],
        [1900, 60, 120],
      ],
      { size: '15x0.7' },
    );
    const rows = section(e.plan, 'boxing')?.rows;
    expect(rows?.flatMap((r) => (r.kind === 'fact' ? [r.label] : []))).toEqual(['Hot 15', 'Cold 15']);
    expect(figureOf(rows, 'Smallest inside, in height')).toBe(80);
  });

  test('no box, no section; nor for a box with nothing in it', () => {
    expect(section(example().plan, 'boxing')).toBeUndefined();
    expect(section(boxed(200, 100, []).plan, 'boxing')).toBeUndefined();
  });
});

describe('floors', () => {
  test('below the joists nothing is cut, and the clips are told', () => {
    const plan = joisted().run('r', 'cold', [
      [1200, 0, 2370],
      [1200, 1990, 2370],
    ]).plan;
    const found = section(plan, 'floors');
    expect(found?.answer).toBe('no holes');
    expect(figureOf(found?.rows, 'Clips for copper 22')).toBe(1.8);
  });

  test('the edition of clips the job has pinned is the one told', () => {
    const { plan } = joisted().run('r', 'cold', [
      [1200, 0, 2370],
      [1200, 1990, 2370],
    ]);
    const basis = { ...plan.basis, editions: { ...plan.basis.editions, 'pipe-supports': 'pipe-supports-pocket' } };
    expect(figureOf(section({ ...plan, basis }, 'floors')?.rows, 'Clips for copper 22')).toBe(1.9);
  });

  test('gas has a table of its own', () => {
    const { plan } = joisted().run(
      'g',
      'gas',
      [
        [1200, 0, 2370],
        [1200, 1990, 2370],
      ],
      { size: '15x0.7' },
    );
    expect(figureOf(section(plan, 'floors')?.rows, 'Clips for copper 15, gas')).toBe(1.2);
  });

  test('notches are counted apart from holes', () => {
    const plan = joisted()
      .run(
        'n',
        'hot',
        [
          [600, 0, 2593],
          [600, 1990, 2593],
        ],
        { size: '15x0.7' },
      )
      .run('h', 'cold', [
        [1200, 0, 2500],
        [1200, 1990, 2500],
      ]).plan;
    const found = section(plan, 'floors');
    expect(found?.answer).toBe('5 holes');
    expect(figureOf(found?.rows, 'Holes in all')).toBe(5);
    expect(
      found?.rows.flatMap((r) => (r.kind === 'fact' && r.figure?.unit === 'notches' ? [r.figure.value] : [])),
    ).toEqual([5]);
  });

  test('bands are told from bearings where they are drawn', () => {
    const e = joisted({ spanMm: null });
    const space = e.plan.voids.v;
    if (space)
      space.bearings = [
        { a: { x: 500, y: -10 }, b: { x: 500, y: 2010 } },
        { a: { x: 3500, y: -10 }, b: { x: 3500, y: 2010 } },
      ];
    const plan = e.run('r', 'cold', [
      [1400, 0, 2500],
      [1400, 1990, 2500],
    ]).plan;
    const rows = section(plan, 'floors')?.rows;
    expect(figureOf(rows, 'Span')).toBe(3000);
    const holes = rows?.find((r) => r.kind === 'fact' && r.label === 'Holes');
    expect(holes).toMatchObject({ say: '750 to 1200 from either end: x 1250 to 1700 or x 2300 to 2750' });
  });

  test('a house without joists has no such section', () => {
    expect(
      section(
        example().run('r', 'cold', [
          [0, 0, 0],
          [900, 0, 0],
        ]).plan,
        'floors',
      ),
    ).toBeUndefined();
  });
});

describe('gas below a boarded floor', () => {
  test('is one quiet note for the floor, however many runs of it', () => {
    const e = joisted();
    const space = e.plan.voids.v;
    if (space) space.ventilated = null;
    for (const [id, y] of [
      ['g1', 300],
      ['g2', 700],
      ['g3', 1100],
    ] as const)
      e.run(id, 'gas', [
        [100, y, 2500],
        [3900, y, 2500],
      ]);
    const found = evaluate(e.plan, AFTER).findings.filter((f) => f.rule === 'gas/in-void');
    expect(found.map((f) => [f.outcome, f.ids, f.found?.value])).toEqual([['note', ['v'], 11.4]]);
  });
});

describe('hot and balanced cold 150 apart between two joists', () => {
  test('is found as the house with the linen room draws it', () => {
    const e = joisted({ wayDeg: 90, first: { x: 7650, y: 300 }, centresMm: 400, spanMm: 3750 });
    const space = e.plan.voids.v;
    const at = (x: number, y: number) => ({ x, y });
    if (space) space.outline = [at(250, 300), at(8100, 300), at(8100, 4050), at(250, 4050)];
    e.run(
      'A-h1',
      'hot',
      [
        [7725, 2700, 4200],
        [7725, 2340, 4200],
        [7725, 2340, 2575],
        [7725, 1950, 2575],
        [7725, 1950, 3740],
      ],
      { size: '15x0.7' },
    );
    e.run(
      'A-c1',
      'balancedCold',
      [
        [8060, 3300, 3600],
        [7875, 3300, 3600],
        [7875, 3300, 2540],
        [7875, 1950, 2540],
        [7875, 1950, 3740],
      ],
      { size: '15x0.7' },
    );
    const { findings } = evaluate(e.plan, AFTER);
    const found = findings.filter((f) => f.rule === 'structure/heat-beside-cold');
    expect(found.map((f) => [f.outcome, f.ids, f.found?.value])).toEqual([['check', ['A-c1', 'A-h1'], 135]]);
    // Between the same two joists nothing is cut.
    expect(findings.filter((f) => f.rule === 'structure/joists')).toEqual([]);
  });
});
