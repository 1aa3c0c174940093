import type { Box, DisplayList, MarkItem, TextItem } from '../../src/drawing/display-list.ts';
import { paperAt } from '../../src/drawing/labels/paper.ts';
import { TEXT_MM } from '../../src/drawing/look/tokens.ts';
import { plateMm } from '../../src/drawing/paint/prims-of.ts';
import { textWidth } from '../../src/drawing/text/measure.ts';

/** The room of a drawn line of text in paper mm, worked out apart from the code that placed it. */
export function roomOf(item: TextItem, k: number): Box {
  const paper = paperAt(k);
  const [x, y] = paper.at(item.at, item.spread);
  const [ox, oy] = item.offsetMm ?? [0, 0];
  const mm = TEXT_MM.screen[item.size];
  const plain = { w: textWidth(item.text, mm, item.weight), h: mm };
  const { w, h } = item.plate === undefined ? plain : plateMm(item.text, mm);
  const left = x + ox - (item.align === 'left' ? 0 : item.align === 'right' ? w : w / 2);
  const upright = item.turnDeg === 90;
  if (upright) return { minX: x + ox - h / 2, maxX: x + ox + h / 2, minY: y + oy - w / 2, maxY: y + oy + w / 2 };
  return { minX: left, maxX: left + w, minY: y + oy - h / 2, maxY: y + oy + h / 2 };
}

/** The room of a finding's mark, 26 px across. */
export function roomOfMark(item: MarkItem, k: number): Box {
  const half = 26 / 3.4 / 2;
  const [x, y] = paperAt(k).at(item.at);
  const [ox, oy] = item.offsetMm ?? [0, 0];
  return { minX: x + ox - half, maxX: x + ox + half, minY: y + oy - half, maxY: y + oy + half };
}

const HAIR = 1e-6;
export const overlap = (a: Box, b: Box): boolean =>
  a.minX < b.maxX - HAIR && b.minX < a.maxX - HAIR && a.minY < b.maxY - HAIR && b.minY < a.maxY - HAIR;

export const labels = (list: DisplayList): { id: string; item: TextItem }[] =>
  list.items
    .filter((g) => g.group === 'label')
    .flatMap((g) => g.items.flatMap((item) => (item.t === 'text' ? [{ id: g.id, item }] : [])));

export const tagsOf = (list: DisplayList): TextItem[] =>
  labels(list).flatMap(({ item }) => (item.plate === undefined ? [] : [item]));

export const marksOf = (list: DisplayList): MarkItem[] =>
  list.items
    .filter((g) => g.group === 'finding')
    .flatMap((g) => g.items.flatMap((i) => (i.t === 'mark' && i.mark.startsWith('finding:') ? [i] : [])));

/** Words beside the marks of findings: how many more. */
export const countsOf = (list: DisplayList): TextItem[] =>
  list.items.filter((g) => g.group === 'finding').flatMap((g) => g.items.flatMap((i) => (i.t === 'text' ? [i] : [])));
