import { describe, expect, it } from 'vitest';
import { bendsAlong } from '../../../src/engine/drainage/bends-along.ts';
import { drainsOf } from '../../../src/engine/drainage/drains.ts';
import { isPlumb, lieOf } from '../../../src/engine/drainage/gradient.ts';
import { example } from '../../../src/engine/example.ts';
import { give } from '../../../src/engine/given.ts';
import type { Case, Plan } from '../../../src/plan/plan.ts';

const AFTER: Case = { option: 'A', when: 'after' };
const PLASTIC = { kind: 'plastic-overflow', size: '21.5', joining: 'solvent' } as const;
const drains = (plan: Plan, circuit: 'condensate' | 'discharge' = 'condensate') => drainsOf(give(plan, AFTER), circuit);
const places = (plan: Plan) => drains(plan).map((d) => [d.source?.point, d.end?.point, d.steps.map((s) => s.edge.id)]);

/** Two boilers, a tee between, one standpipe. Legs are drawn against the way the water goes. */
const shared = () => {
  const e = example()
    .point('boiler', 'b1', [0, 0, 1300])
    .point('boiler', 'b2', [2000, 0, 1300])
    .point('standpipe', 's', [5000, -150, 0]);
  e.run(
    'k',
    'condensate',
    [
      { point: 's', connection: 'in' },
      [5000, -180, 800],
      [2156, -180, 950],
      [156, -180, 1060],
      { point: 'b1', connection: 'condensate' },
    ],
    PLASTIC,
  );
  return e.run('k2', 'condensate', [{ point: 'b2', connection: 'condensate' }, e.nodesOf('k')[2] ?? ''], PLASTIC).plan;
};

describe('drains', () => {
  it('go from the source to the end, whichever way they were drawn', () => {
    expect(places(shared())).toEqual([
      ['b1', 's', ['k.4', 'k.3', 'k.2', 'k.1']],
      ['b2', 's', ['k2.1', 'k.2', 'k.1']],
    ]);
  });

  it('fall the way the water goes', () => {
    const [first] = drains(shared());
    expect(first?.steps.map((s) => Math.round(s.drop?.mm ?? 0))).toEqual([240, 110, 150, 200]);
    expect(first?.steps.map((s) => Math.round(s.flatMm ?? -1))).toEqual([0, 2000, 2844, 0]);
  });

  it('that start in the air are told from where they are drawn from', () => {
    const plan = example()
      .point('standpipe', 's', [0, 0, 0])
      .run('k', 'condensate', [[0, -30, 900], { point: 's', connection: 'in' }], PLASTIC).plan;
    expect(places(plan)).toEqual([[undefined, 's', ['k.1']]]);
    const bare = example().run(
      'k',
      'condensate',
      [
        [0, 0, 900],
        [1000, 0, 850],
      ],
      PLASTIC,
    ).plan;
    expect(places(bare)).toEqual([[undefined, undefined, ['k.1']]]);
  });

  it('part at a pump: into it by gravity, out of it pushed', () => {
    const plan = example()
      .point('boiler', 'b', [0, 0, 1300])
      .point('condensate-pump', 'p', [218.5, -115, 300])
      .point('standpipe', 's', [3000, -150, 0])
      .run(
        'k',
        'condensate',
        [
          { point: 'b', connection: 'condensate' },
          { point: 'p', connection: 'in' },
        ],
        PLASTIC,
      )
      .run(
        'h',
        'condensate',
        [{ point: 'p', connection: 'out' }, [281, -180, 2200], [3000, -180, 2200], { point: 's', connection: 'in' }],
        { kind: 'plastic', size: '10', joining: 'pushFit' },
      ).plan;
    expect(places(plan)).toEqual([
      ['b', 'p', ['k.1']],
      ['p', 's', ['h.1', 'h.2', 'h.3']],
    ]);
  });

  it('of one service only: relief and discharge are not condensate', () => {
    const plan = example()
      .point('boiler', 'b', [0, 0, 1300])
      .run('p', 'boilerRelief', [{ point: 'b', connection: 'relief' }, [184, -81, 150]], { size: '15x0.7' }).plan;
    expect(drains(plan)).toEqual([]);
    expect(drains(plan, 'discharge').map((d) => [d.source?.point, d.service])).toEqual([['b', 'boilerRelief']]);
  });
});

describe('how a piece lies', () => {
  const step = (b: readonly [number, number, number], size = '22x0.9') => {
    const [drain] = drains(example().run('d', 'discharge', [[0, 0, 1000], b], { size }).plan, 'discharge');
    const [first] = drain?.steps ?? [];
    if (!first) throw new Error('no piece');
    return first;
  };

  it('is upright within what a made copper fitting gives, 3 degrees', () => {
    expect(isPlumb(step([0, 0, 600]))).toBe(true);
    expect(isPlumb(step([20, 0, 600]))).toBe(true);
    expect(isPlumb(step([22, 0, 600]))).toBe(false);
    expect(lieOf(step([0, 0, 1400]))).toEqual({ is: 'up' });
  });

  it('slopes by mm in a metre as seen from above, below zero where it climbs', () => {
    const at = (z: number): unknown => {
      const lie = lieOf(step([2000, 0, z]));
      return lie.is === 'slopes' ? lie.mmPerM.value : lie.is;
    };
    expect(at(990)).toBeCloseTo(5, 9);
    expect(at(1000)).toBe(0);
    expect(at(1010)).toBeCloseTo(-5, 9);
  });

  it('is nothing to judge within two diameters of its own fittings, unless it climbs', () => {
    expect(lieOf(step([44, 0, 1000])).is).toBe('short');
    expect(lieOf(step([45, 0, 1000])).is).toBe('slopes');
    expect(lieOf(step([44, 0, 1010])).is).toBe('slopes');
  });
});

describe('bends on the way', () => {
  const bends = (stops: readonly (readonly [number, number, number])[]) => {
    const given = give(example().run('d', 'discharge', stops, {}).plan, AFTER);
    const [drain] = drainsOf(given, 'discharge');
    return drain ? bendsAlong(given.network, drain).hi : null;
  };

  it('count every turn once, of 45 as of 90, and none within the tolerance', () => {
    expect(
      bends([
        [0, 0, 1000],
        [0, 0, 600],
        [2000, 0, 590],
        [2000, 0, 100],
      ]),
    ).toBe(2);
    expect(
      bends([
        [0, 0, 1000],
        [0, 0, 600],
        [1000, 0, 590],
        [2000, 1000, 580],
      ]),
    ).toBe(2);
    expect(
      bends([
        [0, 0, 1000],
        [0, 0, 800],
        [0, 0, 600],
      ]),
    ).toBe(0);
    expect(
      bends([
        [0, 0, 600],
        [1000, 0, 590],
        [2000, 0, 575],
      ]),
    ).toBe(0);
  });

  it('count the elbow at a thing that faces another way', () => {
    const given = give(
      example()
        .point('tundish', 't', [0, 0, 900], {})
        .run('d', 'discharge', [{ point: 't', connection: 'out' }, [2000, -30, 890]], {}).plan,
      AFTER,
    );
    const [drain] = drainsOf(given, 'discharge');
    expect(drain && bendsAlong(given.network, drain)).toMatchObject({ lo: 1, hi: 1, at: ['t/out'] });
  });
});
