import { otherEnd } from '../../network/network.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { heatingTails, isHeating, type WaterSystem } from './water-systems.ts';

const SHUTS = new Set(['isolation-valve', 'lockshield']);
const HOLDS = new Set(['boiler', 'cylinder']);

/** Does a valve stand between a tail and the first tee or thing after it? */
function shutOff(given: Given, tail: string): boolean {
  const { network, plan } = given;
  let [at, came]: [string, string | null] = [tail, null];
  for (let steps = network.edges.size; steps >= 0; steps--) {
    const v = network.vertices.get(at);
    if (!v) return false;
    if (v.items.some((i) => SHUTS.has(plan.items[i]?.kind ?? ''))) return true;
    const on = v.edges.filter((id) => id !== came);
    const edge = network.edges.get(on[0] ?? '');
    if (on.length !== 1 || !edge || !isHeating(edge) || (came !== null && v.point !== null)) return false;
    [at, came] = [otherEnd(edge, at), edge.id];
  }
  return false;
}

export interface Unvalved {
  readonly point: Point;
  /** Labels of its tails without a valve of their own. */
  readonly tails: readonly string[];
}

/** Boilers and cylinders with drawn heating tails that no drawn valve shuts off: the system has to be emptied to change them. */
export function unvalved(given: Given, system: WaterSystem): Unvalved[] {
  return system.points
    .filter((p) => HOLDS.has(p.kind))
    .flatMap((point) => {
      const open = heatingTails(given, point)
        .filter((t) => system.vertices.has(t) && !shutOff(given, t))
        .map((t) => point.connections.find((c) => `${point.id}/${c.id}` === t)?.label ?? t);
      return open.length === 0 ? [] : [{ point, tails: open }];
    });
}
