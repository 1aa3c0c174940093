import type { Section } from '../../network/trace.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { between, exact, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { kvLossPa } from '../hydraulics/fitting-loss.ts';
import { waterAt } from '../hydraulics/water.ts';
import { litresPerM } from '../water/content.ts';
import { KPA_A_BAR } from '../water/height.ts';
import { lossAt, lossParts } from '../water-system/way-loss.ts';
import type { Preheat } from './preheats.ts';

const kvOf = ({ fields }: Point): number | null => (typeof fields.kv === 'number' && fields.kv > 0 ? fields.kv : null);

/** Length of pipes that follow each other, mm; `hi` null where nothing bounds one of them. */
const metres = (s: Section): { lo: number; hi: number | null } => ({
  lo: s.lengthMm.lo / 1000,
  hi: s.lengthMm.hi === null ? null : s.lengthMm.hi / 1000,
});

function sum(parts: readonly { lo: number; hi: number | null }[], unit: string, digits: number): Quantity {
  const lo = parts.reduce((all, p) => all + p.lo, 0);
  const hi = parts.some((p) => p.hi === null) ? null : parts.reduce((all, p) => all + (p.hi ?? 0), 0);
  return between(lo, hi, unit, digits);
}

/** Water in the pipes, litres; null where a size is not known. */
export function contentOfPipes(pipes: readonly Section[]): Quantity | null {
  const parts = pipes.map((s) => {
    const perM = litresPerM(s.tube.kind, s.tube.size);
    const m = metres(s);
    return perM && { lo: m.lo * perM.lo, hi: m.hi === null ? null : m.hi * perM.lo };
  });
  const known = parts.flatMap((p) => p ?? []);
  return known.length === parts.length && known.length > 0 ? sum(known, 'litres', 2) : null;
}

/** What preheating costs in pressure, and what of it could not be counted. */
export interface ExtraLoss {
  /** bar; open above while something is not counted. */
  readonly bar: Quantity;
  /** Ids of the vessel and valves whose Kv is told: they are in it. */
  readonly counted: readonly string[];
  /** Ids of those without. */
  readonly untold: readonly string[];
  /** What the pipes lack, in words. */
  readonly missing: readonly string[];
}

const M3H_A_LPM = 60 / 1000;
const PA_A_BAR = 1e5;

/** The vessel and every valve its water goes through to the outlets, each once. */
const bodies = ({ vessel, valves, outletValve }: Preheat): Point[] => [
  ...new Map([vessel, ...valves, ...(outletValve ? [outletValve] : [])].map((p) => [p.id, p])).values(),
];

/**
 * Pressure that vessel, valves and the pipes between take away at a flow of water of a temperature: friction and fittings
 * of the pipes, and what bodies lose by their Kv. Null without liquid water or a flow.
 */
export function extraLoss(given: Given, preheat: Preheat, lPerMin: number, tC: number): ExtraLoss | null {
  const water = waterAt(tC);
  if (!water || !(lPerMin > 0)) return null;
  const missing = new Set<string>();
  let [lo, hi]: [number, number | null] = [0, 0];
  for (const trace of given.traces) {
    const pipes = preheat.pipes.filter((s) => given.network.kinds.circuit(s.service) === trace.circuit);
    if (pipes.length === 0) continue;
    const parts = lossParts(given, trace, pipes);
    for (const m of parts.missing) missing.add(m);
    const lost = lossAt(parts, lPerMin, tC);
    lo += lost.lo / KPA_A_BAR;
    hi = hi === null || lost.hi === null ? null : hi + lost.hi / KPA_A_BAR;
  }
  const all = bodies(preheat);
  const told = all.filter((p) => kvOf(p) !== null);
  const inBodies = told.reduce(
    (sum, p) => sum + kvLossPa(lPerMin * M3H_A_LPM, kvOf(p) ?? Number.NaN, water.densityKgM3) / PA_A_BAR,
    0,
  );
  const untold = all.filter((p) => kvOf(p) === null).map((p) => p.id);
  const open = hi === null || untold.length > 0 || missing.size > 0;
  return {
    bar: between(lo + inBodies, open ? null : (hi ?? lo) + inBodies, 'bar', 2),
    counted: told.map((p) => p.id),
    untold,
    missing: [...missing],
  };
}

/** The flow an outlet or a boiler is told to give, litres a minute: the first that is told. */
export function toldFlow(of: readonly (number | null)[]): Quantity | null {
  const found = of.find((n) => n !== null && n > 0);
  return found === undefined || found === null ? null : exact(found, 'litres a minute', 1, 'page');
}
