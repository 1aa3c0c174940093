import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { example } from '../../example.ts';
import { at } from '../supply/houses.ts';

type Fields = Point['fields'];

export interface PreheatHouse {
  /** What heats on. */
  readonly heater?: 'boiler' | 'cylinder';
  readonly heaterFields?: Fields;
  readonly vessel?: Fields;
  /** A mixing valve between the two; null for none. */
  readonly mixing?: Fields | null;
  /** Where the mixing valve's cold comes from. */
  readonly mixingCold?: 'balanced' | 'main' | 'none';
  /** A diverting valve whose other way joins the hot to the shower, through `outlet` where there is one. */
  readonly diverting?: Fields | null;
  /** A mixing valve in the hot to the shower. */
  readonly outlet?: Fields | null;
  readonly basis?: { readonly coldC?: number; readonly hotC?: number };
}

export const GOOD: Fields = { failsShut: true, hasChecks: true };

/** Main, inlet group, preheat vessel, what stands between, a heater, and a shower with balanced cold. */
export function preheatHouse(how: PreheatHouse = {}): Plan {
  const { heater = 'cylinder', mixing = null, mixingCold = 'balanced', diverting = null, outlet = null } = how;
  const e = example()
    .point('stop-tap', 's', [0, 0, 300])
    .point('inlet-group', 'g', [1000, 0, 800], { setBar: 3 })
    .point('preheat-vessel', 'p', [2000, 0, 0], { unvented: true, valveOutlet: 'G1/2', ...how.vessel })
    .point(
      heater,
      'h',
      [5000, 0, 0],
      heater === 'cylinder' ? { unvented: true, ...how.heaterFields } : { ...how.heaterFields },
    )
    .point('shower-valve', 'sh', [8000, 0, 1100])
    .run('m', 'cold', [at('s', 'outlet'), [0, -500, 600], at('g', 'in')])
    .run('v', 'cold', [at('g', 'out'), [1000, -500, 1400], at('p', 'coldIn')])
    .run('k', 'balancedCold', [at('g', 'balanced'), [1500, -700, 1000], [7000, -700, 1000], at('sh', 'cold')]);
  const into = at('h', heater === 'boiler' ? 'cold' : 'coldIn');
  const [hotOf, cold] = [at('h', heater === 'boiler' ? 'hot' : 'hotOut'), e.nodesOf('k')[1] ?? ''];
  let from: { point: string; connection: string } = at('p', 'out');
  if (diverting) {
    e.point('diverting-valve', 'd', [2800, 0, 1500], diverting);
    e.run('w1', 'preheated', [from, [2000, -500, 1600], at('d', 'in')]);
    from = at('d', 'a');
  }
  if (mixing) {
    e.point('mixing-valve', 'mv', [3500, 0, 1500], mixing);
    e.run('w2', 'preheated', [from, [3000, -500, 1700], at('mv', 'hotIn')]);
    const fed = mixingCold === 'balanced' ? cold : (e.nodesOf('m')[1] ?? '');
    if (mixingCold !== 'none')
      e.run('mk', mixingCold === 'main' ? 'cold' : 'balancedCold', [fed, [3500, -900, 1000], at('mv', 'coldIn')]);
    from = at('mv', 'out');
  }
  e.run('w3', 'preheated', [from, [4500, -500, 1800], into]);
  if (outlet) {
    e.point('mixing-valve', 'ov', [6500, 0, 1500], outlet);
    e.run('hh', 'hot', [hotOf, [5500, -500, 2000], at('ov', 'hotIn')]);
    e.run('ok', 'balancedCold', [e.nodesOf('k')[2] ?? '', [6500, -900, 1000], at('ov', 'coldIn')]);
    e.run('h2', 'hot', [at('ov', 'out'), [7000, -500, 2000], at('sh', 'hot')]);
  } else e.run('hh', 'hot', [hotOf, [5500, -500, 2000], at('sh', 'hot')]);
  if (diverting) e.run('dp', 'preheated', [at('d', 'b'), [4000, -1200, 2000], e.nodesOf('hh')[1] ?? '']);
  const { basis } = how;
  if (basis) Object.assign(e.plan.basis, basis);
  return e.plan;
}
