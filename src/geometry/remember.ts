/** What is asked with how many sets of records at most is kept before the oldest goes. */
const KEPT = 32;

const same = (a: readonly unknown[], b: readonly unknown[]): boolean =>
  a.length === b.length && a.every((entry, i) => Object.is(entry, b[i]));

/**
 * Remembers what a pure function made of something, for as long as the records it reads (`partsOf`) are the very same
 * objects in the same order. Records are never changed in place, so the same objects give the same answer.
 */
export function rememberWhile<A, T>(partsOf: (asked: A) => readonly unknown[], work: (asked: A) => T): (asked: A) => T {
  const kept: { parts: readonly unknown[]; answer: T }[] = [];
  return (asked) => {
    const parts = partsOf(asked);
    const i = kept.findIndex((k) => same(k.parts, parts));
    const hit = i < 0 ? { parts, answer: work(asked) } : kept[i];
    if (!hit) throw new Error('unreachable');
    if (i !== 0) {
      if (i > 0) kept.splice(i, 1);
      kept.unshift(hit);
      kept.length = Math.min(kept.length, KEPT);
    }
    return hit.answer;
  };
}

/** Remembers what a pure function made of a list of records. */
export const rememberByRecords = <R, T>(work: (records: readonly R[]) => T): ((records: readonly R[]) => T) =>
  rememberWhile((records: readonly R[]) => records, work);
