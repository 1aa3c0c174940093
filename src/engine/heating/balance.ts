import { waterAt } from '../hydraulics/water.ts';
import { KPA_A_BAR } from '../water/height.ts';

/** One way from the pump and back: its loss in kPa and what flows in its own end, kg/s. */
export interface Way {
  readonly id: string;
  readonly lossKPa: number;
  readonly flowKgPerS: number;
  /** Part of the loss that its own lockshield has while it is open, kPa: it takes up the excess on top of that. */
  readonly openKPa?: number;
}

export interface Balanced extends Way {
  /** What its lockshield has to take up, kPa; 0 on the index circuit. */
  readonly excessKPa: number;
  /** Flow factor its lockshield is then set to, m3/h at 1 bar; null where there is nothing to take up. */
  readonly kv: number | null;
}

export interface Balance {
  /** The circuit that loses most: it decides the pump. */
  readonly index: string;
  readonly pumpKPa: number;
  readonly ways: readonly Balanced[];
}

/** Kv = Q x root of (density / 1000 / bar), as EN 60534-1 has it. */
export function valveKv(flowKgPerS: number, lossKPa: number, tC: number): number | null {
  const water = waterAt(tC);
  if (water === null || !(lossKPa > 0)) return null;
  const m3PerH = (flowKgPerS / water.densityKgM3) * 3600;
  return m3PerH * Math.sqrt(water.densityKgM3 / 1000 / (lossKPa / KPA_A_BAR));
}

/** Null where there is no way. Of two that lose alike the first by id is the index. */
export function balance(ways: readonly Way[], tC: number): Balance | null {
  const sorted = [...ways].sort((a, b) => b.lossKPa - a.lossKPa || (a.id < b.id ? -1 : 1));
  const index = sorted[0];
  if (!index) return null;
  return {
    index: index.id,
    pumpKPa: index.lossKPa,
    ways: sorted.map((w) => {
      const excessKPa = index.lossKPa - w.lossKPa;
      const kv = excessKPa > 0 ? valveKv(w.flowKgPerS, excessKPa + (w.openKPa ?? 0), tC) : null;
      return { ...w, excessKPa, kv };
    }),
  };
}
