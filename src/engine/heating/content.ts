import { constant, figure, type Known } from '../../reference/figure.ts';
import { tube } from '../../reference/tubes.ts';
import { exact, leastSure, type Quantity } from '../../report/quantity.ts';
import { quantityOf } from '../gas/said.ts';
import { rising, scaled } from './spread.ts';

/** Litres in a metre of a bore in mm. */
export const litresPerMetre = (boreMm: number): number => (Math.PI / 4) * boreMm ** 2 * 1e-3;

/** Water in metres of one size of tube, litres; null where the size has no bore. */
export function tubeLitres(kind: string, size: string | null, metres: Quantity): Quantity | null {
  const found = tube(kind, size);
  if (found?.boreMm == null) return null;
  const litres = scaled(metres, litresPerMetre(found.boreMm), 'litres', 1);
  return { ...litres, sureness: leastSure(litres.sureness, found.sureness, 'derived') };
}

const known = (row: string, column: string): Known => {
  const found = figure('heating-content', row, column);
  if (found.is !== 'known') throw new Error(`no ${row} in the table of contents`);
  return found;
};

/** Height of the panels the table is for. */
const TABLE_HEIGHT_MM = constant('heating-water-basis', 'panel', 'mm');

/** A panel radiator by its size in mm, others of height in proportion. Null: nobody said how many panels it has. */
export function panelLitres(panels: string | null, widthMm: number, heightMm: number): Quantity {
  const row = panels === 'single' || panels === 'double' ? panels : 'panel';
  return scaled(quantityOf(known(row, 'perM')), (widthMm / 1000) * (heightMm / TABLE_HEIGHT_MM), 'litres', 1);
}

/** What is usual in a boiler or in a coil whose sheet nobody read. */
export const usualLitres = (what: 'boiler' | 'coil'): Quantity => quantityOf(known(what, 'litres'));

export type Build = 'system' | 'low' | 'any';

/** A whole system by its heat, kW: with panel radiators, of small content, or one nobody looked at. */
export function litresByHeat(kW: Quantity, build: Build): Quantity {
  return rising([kW, quantityOf(known(build, 'perKw'))], 'litres', 0, (n, per) => n * per);
}

/** Inhibitor for a content, litres. */
export function dose(contentL: Quantity): Quantity {
  const share = figure('heating-treatment', 'inhibitor', 'share');
  if (share.is !== 'known') return { ...exact(0, 'litres', 1), hi: null, value: null };
  return rising([contentL, quantityOf(share)], 'litres', 1, (n, part) => n * part);
}

export const contentCite = (row: string, column: string): Known['cite'] => known(row, column).cite;
