import type { Verdict } from '../../report/quantity.ts';
import { leastSize, type SizeChoice, sizeChoices, valveOutlets } from './discharge-size.ts';
import { outletOf, type TundishPipe } from './discharges.ts';

/** How a pipe from a tundish stands against the table of sizes. */
export interface PipeSize {
  readonly outlet: string | null;
  /** Every size of the table for its outlet; of the smallest outlet where nobody read it. */
  readonly choices: readonly SizeChoice[];
  /** Smallest size on its way; null where one was not read or is no copper. */
  readonly drawn: number | null;
  /** The row of the size that is drawn; undefined where the table has none. */
  readonly own: SizeChoice | undefined;
  readonly least: SizeChoice | undefined;
  readonly verdict: Verdict | 'cantTell';
  readonly missing: readonly string[];
}

/** Longest and smallest decide: where it changes size the whole way is held against the smallest. */
export function pipeSize(pipe: TundishPipe): PipeSize {
  const outlets = valveOutlets();
  const outlet = outletOf(pipe.vessels, outlets);
  const ask = { outlet: outlet ?? outlets[0] ?? '', lengthM: pipe.lengthM, bends: pipe.bends };
  const choices = sizeChoices(ask);
  const drawn = pipe.sizes.includes(null) ? null : Math.min(...pipe.sizes.map((s) => s ?? 0));
  const sized = (c: SizeChoice): boolean => c.size === drawn;
  const own = choices.find(sized);
  const unread = [
    ...(outlet === null ? ['the outlet of the safety valve'] : []),
    ...(drawn === null ? ['its size, in copper'] : []),
  ];
  const missing = pipe.lengthM.hi === null ? [...unread, 'how long it is'] : unread;
  const base = { outlet, choices, drawn, own, least: leastSize(ask), missing };
  if (drawn === null) return { ...base, verdict: 'cantTell' };
  // Too small for the smallest valve is too small; nothing passes until it is known which valve it is.
  const verdict = own ? own.verdict : drawn < (choices[0]?.size ?? 0) ? 'stop' : drawnLarger(choices, drawn);
  return { ...base, verdict: outlet === null && verdict !== 'stop' ? 'cantTell' : verdict };
}

/** A size above the last row carries more than that row does; it passes where the last row would. */
function drawnLarger(choices: readonly SizeChoice[], drawn: number): Verdict | 'cantTell' {
  const below = choices.filter((c) => c.size < drawn).pop();
  return below?.verdict === 'pass' ? 'pass' : 'cantTell';
}
