import { figure } from '../../reference/figure.ts';
import { tube } from '../../reference/tubes.ts';
import { addQuantities, exact, leastSure, type Quantity } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';
import { pipeFriction, velocity } from './pipe-friction.ts';

/** One pipe of a way from the main to a draw-off. */
export interface MainSection {
  readonly label: string;
  /** Spoken size of copper: "22". */
  readonly size: string;
  readonly flowLps: number;
  /** Pressure gained by height: below zero where the pipe rises. kPa. */
  readonly heightKpa: number;
  readonly lengthM: number;
  /** Loss of a metre read elsewhere, kPa/m; null to have it worked out. */
  readonly kPaPerM: number | null;
  /** Lost in the valve at its end, kPa; none where there is no valve. */
  readonly valveKpa: number;
}

export interface MainAsk {
  /** Pressure in the main, kPa. */
  readonly atMainKpa: number;
  readonly sections: readonly MainSection[];
  /** Draw-off at the end, a row of the table of needs; null where none is told. */
  readonly need: string | null;
}

const title = 'Pressure along a main service';
const scaled = (q: Quantity, by: number, unit: string, digits: number): Quantity => ({
  lo: q.lo * by,
  hi: q.hi === null ? null : q.hi * by,
  value: q.value === null ? null : q.value * by,
  unit,
  digits,
  sureness: q.sureness,
});
/** What is left of a pressure after a loss: the more is lost, the less is left, so the ends cross over. */
function less(from: Quantity, loss: Quantity): Quantity | null {
  if (loss.hi === null || from.hi === null) return null;
  const value = from.value === null || loss.value === null ? null : from.value - loss.value;
  return {
    ...from,
    lo: from.lo - loss.hi,
    hi: from.hi - loss.lo,
    value,
    sureness: leastSure(from.sureness, loss.sureness),
  };
}

interface Lost {
  readonly steps: readonly WorkingStep[];
  readonly total: Quantity | null;
  readonly missing: readonly string[];
}

/** Too fast is told beside the figures: a loss read elsewhere does not make it slower. */
function tooFast(s: MainSection): string[] {
  const bore = tube('copper', s.size)?.boreMm ?? null;
  const most = figure('water-velocity', 'BS 6700', 'pipe');
  if (bore === null || most.is !== 'known') return [];
  const v = velocity(s.flowLps, bore);
  return v > most.lo
    ? [`${s.label}: ${v.toFixed(2)} m/s is above the ${figures(quantityOf(most))} m/s of BS 6700`]
    : [];
}

/** Effective length x loss a metre + valve, of one section. */
function lossOf(s: MainSection): Lost {
  const share = figure('main-service', 'fittings', 'times');
  if (share.is !== 'known') return { steps: [], total: null, missing: ['the share of the fittings'] };
  const bad = !(s.lengthM >= 0) || !(s.valveKpa >= 0) || !(s.kPaPerM === null || s.kPaPerM >= 0);
  if (bad) return { steps: [], total: null, missing: [`lengths and losses of ${s.label} that are not below zero`] };
  const bore = tube('copper', s.size);
  const friction = pipeFriction({
    flowLps: s.flowLps,
    boreMm: bore?.boreMm ?? null,
    boreSureness: bore?.sureness ?? 'memory',
  });
  const told = s.kPaPerM === null ? null : exact(s.kPaPerM, 'kPa/m', 2, 'page');
  const perM = told ?? friction.result;
  if (!perM) return { steps: friction.steps, total: null, missing: friction.missing.map((m) => `${s.label}: ${m}`) };
  const effective = exact(s.lengthM * share.lo, 'm', 1, share.sureness);
  const pipe = scaled(perM, effective.lo, 'kPa', 1);
  const total = addQuantities([pipe, exact(s.valveKpa, 'kPa', 1, 'page')]);
  return {
    steps: [
      ...(told ? [step(`${s.label}: loss of a metre`, 'as told', told)] : friction.steps),
      step(`${s.label}: effective length`, `${s.lengthM} m x ${share.lo}`, effective, citesOf(share.cite)),
      step(`${s.label}: lost in the pipe`, `${figures(effective)} m x ${figures(perM)} kPa/m`, pipe),
      step(`${s.label}: lost in all`, `with ${s.valveKpa} kPa in its valve`, total),
    ],
    total,
    missing: [],
  };
}

function atTheEnd(need: string | null, left: Quantity): { readonly steps: WorkingStep[]; readonly missing: string[] } {
  if (need === null) return { steps: [], missing: [] };
  const wanted = figure('water-pressure-needs', need, 'kPa');
  if (wanted.is !== 'known') return { steps: [], missing: [`what a ${need} needs`] };
  const spare = less(left, quantityOf(wanted, 1));
  return {
    steps: [
      step('Needed at the end', need, quantityOf(wanted), citesOf(wanted.cite)),
      step('Spare', 'left less needed', spare),
    ],
    missing: [],
  };
}

/**
 * Pressure left at the end of a way of pipes, kPa: at each, pressure by height is added, and what pipe and valve lose is
 * taken off. Null where a section's loss cannot be told or the pressure may be used up on the way.
 */
export function mainService({ atMainKpa, sections, need }: MainAsk): Working {
  if (sections.length === 0) return cannot(title, ['any pipe']);
  if (!(atMainKpa > 0)) return cannot(title, ['the pressure in the main']);
  let left = exact(atMainKpa, 'kPa', 1, 'page');
  const steps: WorkingStep[] = [];
  for (const s of sections) {
    const available = addQuantities([left, exact(s.heightKpa, 'kPa', 1, 'page')]);
    steps.push(step(`${s.label}: available`, `${figures(left)} kPa and ${s.heightKpa} by height`, available));
    const { steps: own, total, missing } = lossOf(s);
    steps.push(...own);
    const after = total && less(available, total);
    if (!after) return cannot(title, missing, steps);
    steps.push(step(`${s.label}: left`, 'available less lost', after));
    if (!(after.lo >= 0)) return cannot(title, [`enough pressure: it may be used up in ${s.label}`], steps);
    left = after;
  }
  const end = atTheEnd(need, left);
  if (end.missing.length > 0) return cannot(title, end.missing, steps);
  return {
    title,
    steps: [...steps, ...end.steps],
    result: left,
    missing: [],
    assumed: [
      'fittings as a share of the pipe, the shortcut of the worked example of BS 6700',
      ...sections.flatMap(tooFast),
    ],
  };
}
