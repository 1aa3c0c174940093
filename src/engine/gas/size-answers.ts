import { table as tableById } from '../../reference/tables.ts';
import { tube } from '../../reference/tubes.ts';
import { againstMost, type Quantity, type Verdict } from '../../report/quantity.ts';
import { metresLeft, steepest } from './metres-left.ts';
import { pathDrop } from './path-drop.ts';
import { type SectionAsk, type SectionDrop, sectionDrop } from './section-drop.ts';

/** A section of a path; `kept` is pipe already there, whose size is not up for choice. */
export interface PathSection extends SectionAsk {
  readonly kept: boolean;
}

export interface SizeAnswer {
  /** "22x0.9", as the plan stores it, and "22", as it is said. */
  readonly size: string;
  readonly label: string;
  readonly drop: Quantity;
  readonly verdict: Verdict | 'cantTell';
  /** Effective metres of this size that may still be added, on its steepest section; null where it cannot be told. */
  readonly metresLeft: number | null;
  readonly sections: readonly SectionDrop[];
  readonly missing: readonly string[];
}

/** Sizes tried for a kind of tube, smallest first; none where the kind has no list. */
export function sizeSteps(tubeKind: string): readonly string[] {
  const row = tableById('gas-size-steps').rows.find((r) => r.key === tubeKind);
  return row ? row.cells.filter((c): c is string => typeof c === 'string') : [];
}

/** The section's loss and with it the lengths of its fittings, were it of another size. */
export const asSize = (section: PathSection, size: string): PathSection =>
  section.kept ? section : { ...section, size };

/** The new section that loses most to the metre: metres added there are used up first. */
function steepestNew(asked: readonly PathSection[], dropped: readonly SectionDrop[]): SectionDrop | undefined {
  const fresh = dropped.filter((_, i) => asked[i]?.kept === false);
  return fresh.reduce<SectionDrop | undefined>(
    (worst, s) => (worst && (steepest(worst) ?? 0) >= (steepest(s) ?? 0) ? worst : s),
    undefined,
  );
}

/**
 * The same path with all its new pipe in one size, once for each size: does it pass, and how much longer may it be?
 * Kept pipe stays as it is and counts. Sizes default to the list of the kind of the first new section.
 */
export function sizeAnswers(path: readonly PathSection[], limitMbar: number, sizes?: readonly string[]): SizeAnswer[] {
  const kind = path.find((s) => !s.kept)?.tubeKind;
  if (kind === undefined) return [];
  return (sizes ?? sizeSteps(kind)).map((size) => {
    const asked = path.map((s) => asSize(s, size));
    const sections = asked.map(sectionDrop);
    const whole = pathDrop(size, sections);
    const worst = steepestNew(asked, sections);
    return {
      size: tube(kind, size)?.size ?? size,
      label: tube(kind, size)?.label ?? size,
      drop: whole.drop,
      verdict: againstMost(whole.drop, limitMbar),
      metresLeft: worst ? metresLeft(whole.drop, worst, limitMbar) : null,
      sections,
      missing: whole.working.missing,
    };
  });
}
