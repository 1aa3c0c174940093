import { gasFlow } from '../../../src/engine/gas/flow.ts';
import type { SectionAsk } from '../../../src/engine/gas/section-drop.ts';
import type { PathSection } from '../../../src/engine/gas/size-answers.ts';
import { exact, type Quantity } from '../../../src/report/quantity.ts';

export const metres = (m: number): Quantity => exact(m, 'm', 1);
export const m3PerH = (q: number): Quantity => exact(q, 'm3/h', 2);

/** Flow of a gross heat input of natural gas at the trade calorific value. */
export function flowOf(kw: number): Quantity {
  const found = gasFlow(exact(kw, 'kW', 1), 'natural', null).result;
  if (!found) throw new Error('the table has a calorific value');
  return found;
}

/** A section of copper with elbows, natural gas, default editions. */
export const section = (
  size: string | null,
  m: number,
  elbows: number,
  flow: Quantity,
  rest: Partial<SectionAsk> = {},
): PathSection => ({
  label: 'gas',
  tubeKind: 'copper',
  size,
  lengthM: metres(m),
  fittings: [{ class: 'elbow90', count: elbows }],
  flow,
  gas: 'natural',
  editions: {},
  kept: false,
  ...rest,
});
