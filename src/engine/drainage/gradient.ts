import { tubeOdMm } from '../../catalogue/tubes.ts';
import { figure } from '../../reference/figure.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { DrainStep } from './drains.ts';

/** How a piece of drain lies. `stands` climbs or is level, so water stays in it; `short` is within its own fittings. */
export type Lie =
  | { readonly is: 'unknown' }
  | { readonly is: 'upright' }
  | { readonly is: 'short' }
  | { readonly is: 'up' }
  | { readonly is: 'slopes'; readonly mmPerM: Quantity };

const MM_PER_M = 1000;
/** Steeper than this many in one is an upright pipe a little out of plumb. */
const PLUMB_DEG = figure('angle-tolerance', 'other', 'tolerance');
const REACH = figure('pipe-judgement', 'fitting reach', 'diameters');

/** Tangent of the angle from plumb up to which a pipe counts as upright. */
function plumbRatio(kind: string): number {
  const own = figure('angle-tolerance', kind, 'tolerance');
  const deg = own.is === 'known' ? own.lo : PLUMB_DEG.is === 'known' ? PLUMB_DEG.lo : 0;
  return Math.tan((deg * Math.PI) / 180);
}

/** Plumb within what made fittings give. */
export const isPlumb = (step: DrainStep): boolean =>
  step.flatMm !== null &&
  step.drop !== null &&
  step.flatMm <= Math.abs(step.drop.mm) * plumbRatio(step.edge.tube.kind) + 1e-6;

export function lieOf(step: DrainStep): Lie {
  const { drop, flatMm, edge } = step;
  if (drop === null || flatMm === null) return { is: 'unknown' };
  if (isPlumb(step)) return drop.mm < 0 ? { is: 'up' } : { is: 'upright' };
  const reach = REACH.is === 'known' ? REACH.lo : 0;
  if (flatMm <= reach * (tubeOdMm(edge.tube) ?? 0) && drop.lo >= 0) return { is: 'short' };
  const perM = (mm: number): number => (mm / flatMm) * MM_PER_M;
  return { is: 'slopes', mmPerM: between(perM(drop.lo), perM(drop.hi), 'mm/m', 1, 'derived', perM(drop.mm)) };
}
