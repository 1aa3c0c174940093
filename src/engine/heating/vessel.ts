import { constant, figure } from '../../reference/figure.ts';
import { between, leastSure, type Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';
import { waterAt } from '../hydraulics/water.ts';
import { rising, scaled } from './spread.ts';

const EN = 'heating-vessel';

/** Growth of water from cold to hot, as a part of its cold volume; null outside its figures. */
export function growth(coldC: number, hotC: number): number | null {
  const [cold, hot] = [waterAt(coldC), waterAt(hotC)];
  return cold && hot ? cold.densityKgM3 / hot.densityKgM3 - 1 : null;
}

/** Part of a vessel that fills between two absolute pressures of one unit. */
export const acceptance = (chargeAbs: number, endAbs: number): number => 1 - chargeAbs / endAbs;

export interface Pressures {
  /** Gauge, bar. */
  readonly chargeBar: Quantity;
  readonly fillBar: Quantity;
  readonly endBar: Quantity;
}

const of = (row: string, column: string): Quantity => {
  const found = figure(EN, row, column);
  if (found.is !== 'known') throw new Error(`no ${row} in the table of vessels`);
  return quantityOf(found);
};

/** Charge, cold fill and highest working pressure by static height in m and the setting of the valve in bar. */
export function pressures(staticM: Quantity, reliefBar: Quantity | null): Pressures {
  const [over, least] = [of('overStatic', 'bar'), of('leastCharge', 'bar')];
  const perM = constant(EN, 'head', 'barPerM');
  const chargeBar = rising([staticM, over, least], 'bar', 2, (m, add, min) => Math.max(min, m * perM + add));
  const relief = reliefBar ?? of('relief', 'bar');
  const endBar = rising([relief], 'bar', 2, (n) => n - constant(EN, 'belowRelief', 'bar'));
  return { chargeBar, fillBar: rising([chargeBar, of('fillOver', 'bar')], 'bar', 1, (c, f) => c + f), endBar };
}

/**
 * Litres of a vessel, by the form of EN 12828: (growth + reserve) x (end + 1) / (end - charge). A vessel so small that
 * the standard asks for a share of itself in reserve is worked out with that share. Null where the charge meets the end.
 */
export function vesselByForm(contentL: number, expands: number, chargeBar: number, endBar: number): number | null {
  if (endBar <= chargeBar) return null;
  const factor = (endBar + 1) / (endBar - chargeBar);
  const grown = contentL * expands;
  const share = constant(EN, 'small', 'share');
  const small = share * factor < 1 ? (grown * factor) / (1 - share * factor) : Number.POSITIVE_INFINITY;
  if (small <= constant(EN, 'small', 'litres')) return small;
  const reserve = Math.max(constant(EN, 'reserve', 'litres'), constant(EN, 'reserve', 'share') * contentL);
  return (grown + reserve) * factor;
}

/** The same with doubt; null where it has no answer at one of its ends. */
export function vesselSize(contentL: Quantity, expands: number, p: Pressures): Quantity | null {
  const at = (content: number, charge: number, end: number) => vesselByForm(content, expands, charge, end);
  const lo = at(contentL.lo, p.chargeBar.lo, p.endBar.hi ?? p.endBar.lo);
  const top = contentL.hi === null || p.chargeBar.hi === null ? null : at(contentL.hi, p.chargeBar.hi, p.endBar.lo);
  if (lo === null || (contentL.hi !== null && p.chargeBar.hi !== null && top === null)) return null;
  const sure = leastSure(contentL.sureness, p.chargeBar.sureness, 'memory');
  return between(lo, top === null ? null : Math.max(lo, top), 'litres', 1, sure);
}

/** The older table: content times a factor by the charge. Null where the charge lies past the table. */
export function vesselByTable(contentL: Quantity, chargeBar: Quantity): Quantity | null {
  const factor = (bar: number): Quantity | null => {
    // Charged lower than the first row, a vessel is no larger than that row asks for.
    const asked = figure('heating-vessel-older', bar);
    const found =
      asked.is === 'outside' && asked.from !== null && bar < asked.from
        ? figure('heating-vessel-older', asked.from)
        : asked;
    return found.is === 'known' ? quantityOf(found) : null;
  };
  const [lo, hi] = [factor(chargeBar.lo), chargeBar.hi === null ? null : factor(chargeBar.hi)];
  if (lo === null || hi === null) return null;
  const low = scaled(contentL, lo.lo, 'litres', 1);
  const high = scaled(contentL, hi.lo, 'litres', 1);
  return {
    ...low,
    hi: high.hi,
    value: lo.lo === hi.lo ? low.value : null,
    sureness: leastSure(low.sureness, lo.sureness),
  };
}
