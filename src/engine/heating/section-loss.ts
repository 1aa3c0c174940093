import type { Quantity } from '../../report/quantity.ts';
import { kvLossPa } from '../hydraulics/fitting-loss.ts';
import type { Regime } from '../hydraulics/friction.ts';
import { roughnessOf, type TubeLoss, tubeLoss } from '../hydraulics/tube-loss.ts';
import { waterAt } from '../hydraulics/water.ts';
import { middle, rising, total } from './spread.ts';

/** One size of pipe with one flow. Metres are of measured pipe and, apart, of what its fittings add. */
export interface PipeAsk {
  readonly flow: Quantity;
  readonly tubeKind: string;
  readonly boreMm: number;
  readonly tC: number;
  readonly lengthM: Quantity;
  readonly fittingsM: Quantity;
  /** Flow factors in m3/h at 1 bar of what stands in line. */
  readonly kvs: readonly Quantity[];
}

export interface PipeLoss {
  readonly velocity: Quantity;
  readonly paPerM: Quantity;
  readonly loss: Quantity;
  readonly re: number;
  readonly regime: Regime;
}

/** Loss of a part with a flow factor, kPa: the most water through the least factor is the high end. */
export function partLoss(flow: Quantity, kv: Quantity, tC: number): Quantity {
  const density = waterAt(tC)?.densityKgM3 ?? 1000;
  const at = (kgPerS: number, factor: number): number => kvLossPa((kgPerS / density) * 3600, factor, density) / 1000;
  const high = kv.lo > 0 && flow.hi !== null ? at(flow.hi, kv.lo) : null;
  const low = kv.hi === null ? 0 : at(flow.lo, kv.hi);
  const value = flow.value !== null && kv.value !== null ? at(flow.value, kv.value) : null;
  return { ...rising([flow, kv], 'kPa', 2, () => 0), lo: low, hi: high, value };
}

/** Null where the tube has no roughness, or the water is outside its figures. */
export function pipeLoss(ask: PipeAsk): PipeLoss | null {
  const roughnessMm = roughnessOf(ask.tubeKind);
  if (roughnessMm === null || waterAt(ask.tC) === null) return null;
  const { boreMm, tC } = ask;
  // Ends and best of a flow are often one figure, and each is asked for its velocity and for its loss.
  const known = new Map<number, TubeLoss | null>();
  const at = (flowKgPerS: number): TubeLoss | null => {
    const found = known.get(flowKgPerS);
    if (found !== undefined) return found;
    const loss = tubeLoss({ flowKgPerS, boreMm, roughnessMm: middle(roughnessMm), tC });
    known.set(flowKgPerS, loss);
    return loss;
  };
  const paPerM = rising([ask.flow], 'Pa/m', 0, (f) => at(f)?.paPerM ?? 0);
  const metres = total([ask.lengthM, ask.fittingsM], 'm', 1);
  const tube = rising([paPerM, metres], 'kPa', 2, (pa, m) => (pa * m) / 1000);
  const here = at(middle(ask.flow));
  return {
    velocity: rising([ask.flow], 'm/s', 2, (f) => at(f)?.velocityMPerS ?? 0),
    paPerM,
    loss: total([tube, ...ask.kvs.map((kv) => partLoss(ask.flow, kv, tC))], 'kPa', 2),
    re: here?.re ?? 0,
    regime: here?.regime ?? 'laminar',
  };
}
