import type { Plan } from '../../../plan/plan.ts';
import type { Item, Point } from '../../../plan/records/pipework.ts';
import { type ExamplePlan, example } from '../../example.ts';

type Fields = Point['fields'];
export const at = (point: string, connection: string) => ({ point, connection }) as const;

export interface Supply {
  /** Where the shower's cold comes from. */
  readonly cold?: 'balanced' | 'main' | 'hot' | 'behindCheck' | 'none';
  readonly tap?: string;
  readonly group?: Fields;
  readonly vessel?: Fields;
  readonly option?: string | null;
  /** Standing pressure told at the stop tap, bar. */
  readonly standing?: number | null;
  /** Single valves in the main instead of a group, in their order; null for a group. */
  readonly valves?: readonly string[] | null;
}

export function setItem(
  plan: Plan,
  id: string,
  node: string | undefined,
  kind: string,
  fields: Item['fields'] = {},
): void {
  plan.items[id] = { id, node: node ?? '', kind, name: '', along: null, fields, option: 'A', sureness: 'seen' };
}

/** A stop tap, an inlet group or single valves, an unvented cylinder, and a shower with its hot and its cold. */
export function cylinderHouse(how: Supply = {}): Plan {
  const { cold = 'balanced', tap = 'shower-valve', option = 'A', valves = null } = how;
  const words = { option };
  const e = example()
    .point('stop-tap', 's', [0, 0, 300], { standingBar: how.standing ?? null }, option)
    .point('cylinder', 'c', [3000, 0, 0], { unvented: true, valveOutlet: 'G1/2', ...how.vessel }, option)
    .point(tap, 'sh', [6000, 0, 1100], {}, option);
  if (valves === null) {
    e.point('inlet-group', 'g', [2000, 0, 800], { setBar: 3, ...how.group }, option);
    e.run('m', 'cold', [at('s', 'outlet'), [0, -500, 600], [2000, -500, 600], at('g', 'in')], words);
    e.run('v', 'cold', [at('g', 'out'), [2000, -500, 1400], at('c', 'coldIn')], words);
  } else {
    const corners = valves.map((_, i): [number, number, number] => [100 * (i + 1), -500, 600]);
    e.run('m', 'cold', [at('s', 'outlet'), [0, -500, 600], ...corners, [2000, -500, 600], at('c', 'coldIn')], words);
    for (const [i, kind] of valves.entries()) setItem(e.plan, `v${i}`, e.nodesOf('m')[i + 2], kind, { setBar: null });
  }
  e.run('h', 'hot', [at('c', 'hotOut'), [3000, -500, 2000], at('sh', 'hot')], words);
  coldTo(e, cold, words);
  return e.plan;
}

function coldTo(e: ExamplePlan, cold: NonNullable<Supply['cold']>, words: { option: string | null }): void {
  const main = e.nodesOf('m')[1] ?? '';
  switch (cold) {
    case 'balanced':
      e.run('k', 'balancedCold', [at('g', 'balanced'), [4000, 0, 1000], at('sh', 'cold')], words);
      break;
    case 'main':
      e.run('k', 'cold', [main, [4000, -800, 600], at('sh', 'cold')], words);
      break;
    case 'behindCheck':
      e.run('k', 'cold', [e.nodesOf('v')[1] ?? '', [4000, -800, 1400], at('sh', 'cold')], words);
      break;
    case 'hot':
      e.run('k', 'hot', [e.nodesOf('h')[1] ?? '', [4000, -800, 2000], at('sh', 'cold')], words);
      break;
    case 'none':
  }
}

export interface Combi {
  readonly reducer?: boolean;
  readonly check?: Fields | null;
  readonly option?: string | null;
}

/** A combi straight off the main, and a shower with its cold off the same main. */
export function combiHouse(how: Combi = {}): Plan {
  const words = { option: how.option ?? 'A' };
  const e = example()
    .point('stop-tap', 's', [0, 0, 300])
    .point('boiler', 'b', [3000, 0, 1300])
    .point('shower-valve', 'sh', [6000, 0, 1100])
    .run('m', 'cold', [at('s', 'outlet'), [0, -500, 600], [1500, -500, 600], [3000, -500, 600], at('b', 'cold')], words)
    .run('h', 'hot', [at('b', 'hot'), [3000, -600, 800], at('sh', 'hot')], words);
  const nodes = e.nodesOf('m');
  e.run('k', 'cold', [nodes[1] ?? '', [4000, -800, 600], at('sh', 'cold')], words);
  if (how.reducer) setItem(e.plan, 'r', nodes[2], 'pressure-reducer', { setBar: 3 });
  if (how.check) setItem(e.plan, 'k1', nodes[2], 'check-valve', how.check);
  return e.plan;
}
