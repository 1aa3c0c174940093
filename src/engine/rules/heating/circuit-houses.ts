import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { example, type RunWords } from '../../example.ts';

interface Told {
  readonly metres?: number;
  readonly words?: RunWords;
  readonly boiler?: Point['fields'];
  readonly heatingKw?: number | null;
  /** Kind of run that is drawn, and from when. */
  readonly withReturn?: boolean;
}

/** A new boiler joined to old tails so many metres away: primaries and nothing else. */
export function primaries({ metres = 4, words = {}, boiler = {}, heatingKw = 12, withReturn = true }: Told): Plan {
  const x = metres * 1000;
  const e = example()
    .point('boiler', 'boiler', [0, 0, 1300], { outputKw: 24, ...boiler })
    .point('old-tails', 'tails', [x, 0, 150], { heatingKw }, null)
    .run(
      'flow',
      'heatingFlow',
      [{ point: 'boiler', connection: 'flow' }, [x, -60, 900], { point: 'tails', connection: 'flow' }],
      words,
    );
  if (!withReturn) return e.plan;
  const stops = [
    { point: 'boiler', connection: 'return' },
    [x, -160, 900] as const,
    { point: 'tails', connection: 'return' },
  ];
  return e.run('return', 'heatingReturn', stops, words).plan;
}

interface Radiator {
  /** mm along the room. */
  readonly at: number;
  readonly kW: number | null;
}

/** A new boiler and new radiators, each off one pair of 22 with 15 tails. */
export function radiators(of: readonly Radiator[], boiler: Point['fields'] = {}): Plan {
  const e = example().point('boiler', 'boiler', [0, 0, 1300], { outputKw: 24, ...boiler });
  of.forEach((r, i) => void e.point('radiator', `r${i + 1}`, [r.at, 3000, 150], { outputKw: r.kW }));
  const pair = [
    ['flow', 'heatingFlow', 200],
    ['return', 'heatingReturn', 400],
  ] as const;
  for (const [id, service, y] of pair) {
    const tees = of.map((r) => [r.at, y, 100] as const);
    e.run(id, service, [{ point: 'boiler', connection: id }, [0, y, 100], ...tees]);
    const nodes = e.nodesOf(id);
    of.forEach((_, i) => {
      const tee = nodes[i + 2] ?? '';
      e.run(`${id}-${i + 1}`, service, [tee, { point: `r${i + 1}`, connection: id }], { size: '15x0.7' });
    });
  }
  return e.plan;
}
