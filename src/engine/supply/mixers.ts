import { pointKinds } from '../../catalogue/point-kinds.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Given } from '../given.ts';
import { type PressureFrom, pressureFrom } from './reducers.ts';
import { isNewWay, pointsOn, type Way, wayTo } from './way-back.ts';

/** Points that warm water. A boiler only where its water runs through it, which is what a way tells. */
export const HEATERS: ReadonlySet<string> = new Set(['cylinder', 'preheat-vessel', 'boiler']);

/** How the cold of a mixer stands to its hot. */
export type Balance =
  | { readonly is: 'balanced'; readonly by: PressureFrom }
  | { readonly is: 'unlike'; readonly hot: PressureFrom; readonly cold: PressureFrom }
  | { readonly is: 'afterHeater'; readonly heater: Point }
  | { readonly is: 'vented'; readonly vessel: Point }
  | { readonly is: 'unseen' };

/** A point that takes hot and cold. */
export interface Mixer {
  readonly point: Point;
  readonly hot: Way;
  readonly cold: Way;
  /** The last thing that warms its hot; null where the drawing stops before. */
  readonly heater: Point | null;
  readonly balance: Balance;
  readonly isNew: boolean;
  /** Its cold comes off behind the check valve of the vessel it shares a reducer with. */
  readonly behindCheck: boolean;
}

const CHECKS = new Set(['check-valve', 'double-check']);

function balanceOf(given: Given, hot: Way, cold: Way): Balance {
  const heater = pointsOn(cold).find((p) => HEATERS.has(p.kind));
  if (heater) return { is: 'afterHeater', heater };
  const vented = pointsOn(hot).find((p) => HEATERS.has(p.kind) && p.fields.unvented === false);
  if (vented) return { is: 'vented', vessel: vented };
  const [byHot, byCold] = [pressureFrom(given, hot), pressureFrom(given, cold)];
  const heated = pointsOn(hot).some((p) => HEATERS.has(p.kind));
  if (!byHot || !byCold || !heated) return { is: 'unseen' };
  return byHot.id === byCold.id ? { is: 'balanced', by: byCold } : { is: 'unlike', hot: byHot, cold: byCold };
}

/** Does the cold go through a check valve that the hot's water goes through too? */
function behindCheck(hot: Way, cold: Way): boolean {
  const onHot = new Set(hot.steps.flatMap((s) => (s.is === 'item' && CHECKS.has(s.item.kind) ? [s.item.id] : [])));
  const heats = hot.steps.some((s) => s.is === 'point' && s.point.fields.unvented === true);
  return cold.steps.some((s) => {
    if (s.is === 'item') return heats && onHot.has(s.item.id);
    return s.is === 'point' && s.point.kind === 'inlet-group' && s.outAt === 'out' && s.point.fields.hasCheck !== false;
  });
}

function mixerAt(given: Given, point: Point): Mixer | null {
  const { kinds } = given.network;
  const of = (circuit: string) =>
    point.connections.find((c) => kinds.circuit(c.service) === circuit && kinds.part(point, c.id) === 'end');
  const [hotAt, coldAt] = [of('hot'), of('cold')];
  if (!hotAt || !coldAt) return null;
  const [hot, cold] = [wayTo(given, point, hotAt.id), wayTo(given, point, coldAt.id)];
  return {
    point,
    hot,
    cold,
    heater: pointsOn(hot).findLast((p) => HEATERS.has(p.kind)) ?? null,
    balance: balanceOf(given, hot, cold),
    isNew: point.option !== null || isNewWay(given, hot) || isNewWay(given, cold),
    behindCheck: behindCheck(hot, cold),
  };
}

const known = new WeakMap<Given, readonly Mixer[]>();

/** Every tap, shower and mixing valve that stands, with where its hot and its cold come from. */
export function mixersOf(given: Given): readonly Mixer[] {
  const kept = known.get(given);
  if (kept) return kept;
  const found = Object.values(given.plan.points)
    .filter((p) => pointKinds.get(p.kind)?.group === 'tap' || p.kind === 'mixing-valve')
    .filter((p) => given.network.alive.has('points', p.id))
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((p) => mixerAt(given, p) ?? []);
  known.set(given, found);
  return found;
}

/** Where hot and cold meet in one body: there they want one pressure. At a sink or basin the main's own cold is usual. */
export const wantsBalance = (point: Point): boolean =>
  point.kind === 'shower-valve' || point.kind === 'bath-taps' || point.kind === 'mixing-valve';
