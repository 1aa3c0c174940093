import type { Section, Trace } from '../../network/trace.ts';
import { tube } from '../../reference/tubes.ts';
import type { Quantity } from '../../report/quantity.ts';
import { middle } from '../heating/spread.ts';
import { solveNetwork } from '../hydraulics/solve-network.ts';
import { roughnessOf } from '../hydraulics/tube-loss.ts';
import { waterAt } from '../hydraulics/water.ts';

/** What each end of a circuit takes or brings, kg/s; null where that is not known. */
export type EndFlow = (vertex: string) => number | null;

/** Where each part of the circuit starts, or where it gathers to. */
const rootsOf = (trace: Trace): ReadonlySet<string> =>
  new Set(trace.sections.filter((s) => s.parent === null).map((s) => (s.gathers ? s.to : s.from)));

function linkOf(section: Section) {
  const size = tube(section.tube.kind, section.tube.size);
  const roughness = roughnessOf(section.tube.kind);
  if (size?.boreMm == null || roughness === null) return null;
  const mm = section.lengthMm.value ?? (section.lengthMm.lo + (section.lengthMm.hi ?? section.lengthMm.lo)) / 2;
  return {
    id: section.id,
    from: section.from,
    to: section.to,
    lengthM: mm / 1000,
    boreMm: size.boreMm,
    roughnessMm: middle(roughness),
    k: 0,
  };
}

/**
 * Flows of a circuit that has rings, kg/s, positive the way the section is told: shared so that every way round loses
 * the same, solved on the whole net at once. Undefined where a size or an end is not known, or it does not settle.
 */
export function ringFlows(trace: Trace, at: EndFlow, tC: number): ReadonlyMap<string, number> | undefined {
  const density = waterAt(tC)?.densityKgM3;
  if (density === undefined) return undefined;
  const links = trace.sections.map(linkOf);
  if (links.some((l) => l === null)) return undefined;
  const roots = rootsOf(trace);
  const ids = [...new Set(trace.sections.flatMap((s) => [s.from, s.to]))].filter((v) => !roots.has(v));
  const takes = ids.map((id) => ({ id, flow: at(id) }));
  if (takes.some((t) => t.flow === null)) return undefined;
  const litres = (kgPerS: number): number => (kgPerS / density) * 1000;
  const solved = solveNetwork({
    nodes: [
      ...[...roots].map((id) => ({ id, headM: 0 })),
      ...takes.map((t) => ({ id: t.id, demandLPerS: litres(t.flow ?? 0) })),
    ],
    links: links.flatMap((l) => (l === null ? [] : [l])),
    tC,
  });
  if (!solved.ok) return undefined;
  return new Map([...solved.flowLPerS].map(([id, l]) => [id, (l * density) / 1000]));
}

/** A ring's flow with its doubt: as told by the net at the least, the best and the greatest demand. */
export function spreadOf(of: readonly (number | undefined)[]): Quantity | null {
  const known = of.filter((n) => n !== undefined).map(Math.abs);
  if (known.length < of.length || known.length === 0) return null;
  const [lo, hi] = [Math.min(...known), Math.max(...known)];
  return { lo, hi, value: known[1] ?? null, unit: 'kg/s', digits: 3, sureness: 'derived' };
}
