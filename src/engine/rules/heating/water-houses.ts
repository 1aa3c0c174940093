import type { Plan } from '../../../plan/plan.ts';
import type { Point } from '../../../plan/records/pipework.ts';
import { example } from '../../example.ts';

const at = (point: string, connection: string) => ({ point, connection }) as const;

export interface WaterHouse {
  /** Height the flow goes over at, between boiler and radiator. */
  readonly overMm?: number;
  /** Height both go under at. */
  readonly underMm?: number;
  readonly boiler?: Point['fields'];
  readonly radiator?: Point['fields'];
  /** Items on the flow at its high or low corner, and on the return before the boiler. */
  readonly onFlow?: string;
  readonly onReturn?: string;
  readonly option?: string | null;
  readonly returnDrawn?: boolean;
  /** Old tails in place of the radiator, with these fields. */
  readonly tails?: Point['fields'];
}

export function put(plan: Plan, id: string, node: string | undefined, kind: string, option: string | null = 'A'): void {
  plan.items[id] = { id, node: node ?? '', kind, name: '', along: null, fields: {}, option, sureness: 'seen' };
}

/** A boiler and a radiator, or old tails, 4 m away; flow and return side by side at the height asked for. */
export function waterHouse(how: WaterHouse = {}): Plan {
  const { option = 'A', underMm, overMm, returnDrawn = true } = how;
  const words = { option };
  const z = overMm ?? underMm ?? 100;
  const load = how.tails ? 'ot' : 'r';
  const e = example().point('boiler', 'b', [0, 0, 1300], { type: 'system', ...how.boiler }, option);
  if (how.tails) e.point('old-tails', 'ot', [4000, 0, 90], how.tails, null);
  else e.point('radiator', 'r', [4000, 0, 150], { outputKw: 1.5, panels: 'double', ...how.radiator }, option);
  e.run('f', 'heatingFlow', [at('b', 'flow'), [-120, 80, z], [2000, 80, z], [3500, 80, z], at(load, 'flow')], words);
  if (returnDrawn) {
    const back = [
      at(load, 'return'),
      [4500, 160, underMm ?? 100],
      [120, 160, underMm ?? 100],
      at('b', 'return'),
    ] as const;
    e.run('k', 'heatingReturn', back, words);
  }
  if (how.onFlow) put(e.plan, 'i1', e.nodesOf('f')[2], how.onFlow, option);
  if (how.onReturn) put(e.plan, 'i2', e.nodesOf('k')[2], how.onReturn, option);
  return e.plan;
}
