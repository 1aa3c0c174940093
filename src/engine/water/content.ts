import { tube } from '../../reference/tubes.ts';
import { exact, leastSure, type Quantity } from '../../report/quantity.ts';
import { times } from '../gas/interval.ts';

/** Water in a metre of tube, litres, by its bore; null for a size that is not known or has no bore. */
export function litresPerM(tubeKind: string, size: string | null): Quantity | null {
  const found = tube(tubeKind, size);
  if (!found || found.boreMm === null) return null;
  // A bore in mm and a metre of length: mm2 times m is a thousandth of a litre.
  const litres = ((Math.PI / 4) * found.boreMm ** 2) / 1000;
  return exact(litres, 'litres/m', 3, leastSure('derived', found.sureness));
}

/** Water in a length of tube, litres. */
export function contentOf(lengthM: Quantity, tubeKind: string, size: string | null): Quantity | null {
  const perM = litresPerM(tubeKind, size);
  return perM && times(lengthM, perM, 'litres', 2);
}
