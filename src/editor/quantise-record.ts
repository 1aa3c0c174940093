import { quantise } from '../plan/units.ts';

/** Names under which a record holds a length: `x`, `y`, `z`, `mm`, and whatever ends in Mm. */
const isLength = (key: string): boolean =>
  key === 'x' || key === 'y' || key === 'z' || key === 'mm' || key.endsWith('Mm');

/** Ranges of lengths: their two ends are lengths, though called lo and hi. */
const isRange = (key: string): boolean => key === 'lengthMm' || key === 'assumed';

/** What a user typed into a field keeps its digits: nobody knows that it is a length. */
const isOwn = (key: string): boolean => key === 'fields';

/** Brings every length in a record to tenths. Gives the record itself where nothing had to be rounded. */
export function quantiseRecord<T>(value: T, inRange = false): T {
  if (Array.isArray(value)) {
    const next = value.map((entry) => quantiseRecord(entry, inRange));
    return next.some((entry, i) => entry !== value[i]) ? (next as T) : value;
  }
  if (typeof value !== 'object' || value === null) return value;
  const next = { ...(value as Record<string, unknown>) };
  let changed = false;
  for (const [key, entry] of Object.entries(value)) {
    const rounded =
      typeof entry === 'number'
        ? isLength(key) || inRange
          ? quantise(entry)
          : entry
        : isOwn(key)
          ? entry
          : quantiseRecord(entry, isRange(key));
    if (Object.is(rounded, entry)) continue;
    next[key] = rounded;
    changed = true;
  }
  return changed ? (next as T) : value;
}
