import { exact, type Quantity } from '../../report/quantity.ts';
import { backToBack, type ChaseWay, chaseLimits } from './chase-limits.ts';

export interface ChaseAsk {
  readonly way: ChaseWay;
  /** Into the leaf, without its finishes: from there to the far side of the pipe. */
  readonly depthMm: number;
  /** Of all the level chase of the run in this wall. */
  readonly lengthMm: number;
  readonly leafMm: number | null;
  readonly hollow: boolean | null;
}

export interface ChaseFault {
  readonly kind: 'hollow' | 'depth' | 'length' | 'backToBack' | 'notTold';
  readonly found: Quantity | null;
  readonly wanted: Quantity | null;
  readonly missing: readonly string[];
}

const fault = (kind: ChaseFault['kind'], found: Quantity | null, wanted: Quantity | null): ChaseFault => ({
  kind,
  found,
  wanted,
  missing: [],
});

/** What is wrong with a pipe let into a masonry leaf, worst first. A leaf nobody described cannot be judged. */
export function chaseFaults(ask: ChaseAsk): ChaseFault[] {
  if (ask.hollow === true) return [fault('hollow', null, null)];
  const missing = [
    ...(ask.leafMm === null ? ['the thickness of the leaf without its finishes'] : []),
    ...(ask.hollow === null ? ['whether its blocks are hollow'] : []),
  ];
  if (missing.length > 0 || ask.leafMm === null) return [{ kind: 'notTold', found: null, wanted: null, missing }];
  const limits = chaseLimits(ask.way, ask.leafMm);
  const over = (mm: number, most: Quantity | null): boolean => most !== null && mm > (most.hi ?? most.lo) + 1e-6;
  return [
    ...(over(ask.depthMm, limits.depth) ? [fault('depth', exact(ask.depthMm, 'mm', 0), limits.depth)] : []),
    ...(over(ask.lengthMm, limits.length) ? [fault('length', exact(ask.lengthMm, 'mm', 0), limits.length)] : []),
  ];
}

/** Chases on both faces of one wall: how far apart along it, against the thickness. Null where far enough. */
export function backToBackFault(apartMm: number, thicknessMm: number): ChaseFault | null {
  if (!backToBack(apartMm, thicknessMm)) return null;
  return fault('backToBack', exact(Math.max(0, apartMm), 'mm', 0), exact(thicknessMm, 'mm', 0));
}
