import type { Box, Item, TextItem, Vec } from '../display-list.ts';
import { TEXT_MM } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';

/** A figure on the long section, with the places it may stand at, best first: all in mm of paper from `at`. */
export interface Figure {
  readonly at: Vec;
  readonly text: string;
  readonly strong: boolean;
  readonly ink: string;
  readonly tries: readonly { readonly off: Vec; readonly align: TextItem['align'] }[];
  /** It is left out rather than set over another; one that must show takes its first place. */
  readonly must?: boolean;
}

const AIR_MM = 0.5;
const LINE = 1.1;

/** Sets figures one after the other, so that none covers another or reaches out of `within` (mm of the plane). */
export function setFigures(figures: readonly Figure[], mmPerPaperMm: number, within: Box): Item[] {
  const k = mmPerPaperMm;
  const size = TEXT_MM.screen.dimension;
  const taken: Box[] = [];
  const boxOf = (f: Figure, off: Vec, align: TextItem['align']): Box => {
    const w = (textWidth(f.text, size, f.strong ? 600 : 400) + AIR_MM) * k;
    const h = size * LINE * k;
    const x = f.at[0] + off[0] * k - (align === 'left' ? 0 : align === 'right' ? w : w / 2);
    const y = f.at[1] + off[1] * k - h / 2;
    return { minX: x, maxX: x + w, minY: y, maxY: y + h };
  };
  const free = (b: Box): boolean =>
    b.minX >= within.minX &&
    b.maxX <= within.maxX &&
    b.minY >= within.minY &&
    b.maxY <= within.maxY &&
    taken.every((t) => b.maxX <= t.minX || b.minX >= t.maxX || b.maxY <= t.minY || b.minY >= t.maxY);
  return figures.flatMap((f): Item[] => {
    const [first] = f.tries;
    const chosen = f.tries.find(({ off, align }) => free(boxOf(f, off, align))) ?? (f.must ? first : undefined);
    if (!chosen) return [];
    taken.push(boxOf(f, chosen.off, chosen.align));
    return [
      {
        t: 'text',
        at: f.at,
        text: f.text,
        size: 'dimension',
        weight: f.strong ? 600 : 400,
        align: chosen.align,
        ink: f.ink,
        turnDeg: 0,
        halo: true,
        offsetMm: chosen.off,
      },
    ];
  });
}
