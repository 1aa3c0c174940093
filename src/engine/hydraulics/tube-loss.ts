import { figure } from '../../reference/figure.ts';
import type { Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';
import { frictionFactor, type Regime, regimeOf } from './friction.ts';
import { waterAt } from './water.ts';

export interface TubeFlow {
  /** Either way; the loss is along the flow. */
  readonly flowKgPerS: number;
  readonly boreMm: number;
  readonly roughnessMm: number;
  readonly tC: number;
}

/** Friction of a straight tube. At rest all but the regime is 0. */
export interface TubeLoss {
  readonly velocityMPerS: number;
  readonly re: number;
  readonly regime: Regime;
  /** Darcy friction factor. */
  readonly f: number;
  readonly paPerM: number;
}

/** Null outside the temperatures of liquid water, for a bore or roughness that is none, or a flow that is no number. */
export function tubeLoss({ flowKgPerS, boreMm, roughnessMm, tC }: TubeFlow): TubeLoss | null {
  const water = waterAt(tC);
  const flow = Math.abs(flowKgPerS);
  if (water === null || !(boreMm > 0) || !(roughnessMm >= 0) || !Number.isFinite(flow)) return null;
  const bore = boreMm / 1000;
  const velocityMPerS = flow / water.densityKgM3 / ((Math.PI / 4) * bore * bore);
  const re = (water.densityKgM3 * velocityMPerS * bore) / water.viscosityPaS;
  const regime = regimeOf(re);
  if (re === 0) return { velocityMPerS: 0, re: 0, regime, f: 0, paPerM: 0 };
  const f = frictionFactor(re, roughnessMm / boreMm);
  return { velocityMPerS, re, regime, f, paPerM: ((f / bore) * water.densityKgM3 * velocityMPerS ** 2) / 2 };
}

const roughness = new Map<string, Quantity | null>();

/** Roughness of the inside of a kind of tube, mm; null where none has been set down. Source: table roughness. */
export function roughnessOf(tubeKind: string): Quantity | null {
  const known = roughness.get(tubeKind);
  if (known !== undefined) return known;
  const found = figure('roughness', tubeKind);
  const q = found.is === 'known' ? quantityOf(found) : null;
  roughness.set(tubeKind, q);
  return q;
}
