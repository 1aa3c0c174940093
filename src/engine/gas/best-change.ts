import { tube } from '../../reference/tubes.ts';
import { againstMost, type Quantity, type Verdict } from '../../report/quantity.ts';
import { pathDrop } from './path-drop.ts';
import { sectionDrop } from './section-drop.ts';
import { type PathSection, sizeSteps } from './size-answers.ts';

export interface Change {
  /** Place of the section in the path, its size now and the next one up (ids as the plan stores them). */
  readonly index: number;
  readonly from: string;
  readonly to: string;
  /** Loss of the whole path after the change, mbar. */
  readonly drop: Quantity;
  readonly verdict: Verdict | 'cantTell';
}

/** The next size of the kind's list that is larger in outside diameter; undefined at the top of the list. */
export function nextSizeUp(tubeKind: string, size: string | null): string | undefined {
  const now = tube(tubeKind, size);
  if (!now) return undefined;
  return sizeSteps(tubeKind).find((s) => (tube(tubeKind, s)?.odMm ?? 0) > now.odMm);
}

/** Lowest worst case first; paths that are not bounded after those that are. Equal ones keep the order of the path. */
function order(a: Change, b: Change): number {
  const top = (c: Change): number => c.drop.hi ?? Number.POSITIVE_INFINITY;
  if (top(a) !== top(b)) return top(a) - top(b);
  return a.drop.lo - b.drop.lo || a.index - b.index;
}

/**
 * Every single change of one section to the next size up, best first: the first is the one change that helps most.
 * Kept pipe may be named too (`alsoKept`), since sometimes only that helps. Empty where nothing can go up.
 */
export function sizeUpChanges(path: readonly PathSection[], limitMbar: number, alsoKept: boolean): Change[] {
  const changes = path.flatMap((section, index): Change[] => {
    const to = nextSizeUp(section.tubeKind, section.size);
    if (to === undefined || section.size === null || (section.kept && !alsoKept)) return [];
    const after = pathDrop(
      '',
      path.map((s, i) => sectionDrop(i === index ? { ...s, size: to } : s)),
    );
    const from = tube(section.tubeKind, section.size)?.size ?? section.size;
    return [{ index, from, to, drop: after.drop, verdict: againstMost(after.drop, limitMbar) }];
  });
  return changes.sort(order);
}
