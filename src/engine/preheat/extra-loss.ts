import type { Section } from '../../network/trace.ts';
import { tube } from '../../reference/tubes.ts';
import { between, exact, type Quantity } from '../../report/quantity.ts';
import { roughnessOf, tubeLoss } from '../hydraulics/tube-loss.ts';
import { waterAt } from '../hydraulics/water.ts';
import { litresPerM } from '../water/content.ts';

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

/** Friction of the straight pipes at a flow of cold water, bar; null where a size or roughness is not known. */
export function lossOfPipes(pipes: readonly Section[], lPerMin: number, tC: number): Quantity | null {
  const water = waterAt(tC);
  if (!water || !(lPerMin > 0) || pipes.length === 0) return null;
  const flowKgPerS = (lPerMin / 60) * (water.densityKgM3 / 1000);
  const parts = pipes.map((s) => {
    const boreMm = tube(s.tube.kind, s.tube.size)?.boreMm ?? null;
    const rough = roughnessOf(s.tube.kind);
    const m = metres(s);
    if (boreMm === null || rough === null) return null;
    const of = (mm: number) => tubeLoss({ flowKgPerS, boreMm, roughnessMm: mm, tC })?.paPerM ?? null;
    const [lo, hi] = [of(rough.lo), of(rough.hi ?? rough.lo)];
    return lo === null || hi === null ? null : { lo: (m.lo * lo) / 1e5, hi: m.hi === null ? null : (m.hi * hi) / 1e5 };
  });
  const known = parts.flatMap((p) => p ?? []);
  return known.length === parts.length ? sum(known, 'bar', 2) : null;
}

/** The flow an outlet or a boiler is told to give, litres a minute: the first that is told. */
export function toldFlow(of: readonly (number | null)[]): Quantity | null {
  const found = of.find((n) => n !== null && n > 0);
  return found === undefined || found === null ? null : exact(found, 'litres a minute', 1, 'page');
}
