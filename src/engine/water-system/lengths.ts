import type { Span } from '../../network/network.ts';
import type { Section } from '../../network/trace.ts';
import { addQuantities, between, exact, type Quantity } from '../../report/quantity.ts';

/** A length of pipe in metres, with its doubt. */
export const metresOf = ({ lo, hi, value }: Span): Quantity =>
  between(lo / 1000, hi === null ? null : hi / 1000, 'm', 1, 'derived', value === null ? null : value / 1000);

/** Length of sections one after the other; 0 m of none. */
export const lengthOf = (sections: readonly Section[]): Quantity =>
  sections.length === 0 ? exact(0, 'm', 1) : addQuantities(sections.map((s) => metresOf(s.lengthMm)));
