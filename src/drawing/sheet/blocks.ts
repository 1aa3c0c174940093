import type { Prim } from '../paint/prim.ts';
import type { Block } from './flow.ts';
import { type ParagraphAt, paragraph, rule, SHEET_TEXT, words } from './ink.ts';

/** Text of one look, with room under it. */
export function textBlock(
  text: string,
  w: number,
  look: Omit<ParagraphAt, 'x' | 'y' | 'w'> & { readonly under?: number } = {},
): Block {
  const { h } = paragraph(text, { ...look, x: 0, y: 0, w });
  return { h: h + (look.under ?? 0), draw: (x, y) => paragraph(text, { ...look, x, y, w }).prims };
}

export const gapBlock = (h: number): Block => ({ h, draw: () => [] });

/** A heading on its own line, over a rule; never the last thing of a column. */
export function headingBlock(text: string, w: number): Block {
  const size = SHEET_TEXT.heading;
  const { h } = paragraph(text, { x: 0, y: 0, w, size, weight: 600 });
  return {
    h: h + 5,
    keep: true,
    draw: (x, y) => [
      ...paragraph(text, { x, y: y + 2, w, size, weight: 600 }).prims,
      rule([x, y + h + 3], [x + w, y + h + 3], 0.25),
    ],
  };
}

const AMOUNT_MM = 17;

/** A figure to the right of its own narrow column, and what it is of; a smaller line under it. */
export function amountBlock(amount: string, what: string, under: string, w: number): Block {
  const text = { w: w - AMOUNT_MM - 3 };
  const first = paragraph(what, { ...text, x: 0, y: 0 });
  const second = under === '' ? null : paragraph(under, { ...text, x: 0, y: 0, size: SHEET_TEXT.caption });
  const h = first.h + (second?.h ?? 0) + 1.4;
  return {
    h,
    draw(x, y): Prim[] {
      const left = x + AMOUNT_MM + 3;
      return [
        words(amount, { x: x + AMOUNT_MM, y: y + SHEET_TEXT.body * 0.7, weight: 600, align: 'right' }),
        ...paragraph(what, { ...text, x: left, y }).prims,
        ...(second ? paragraph(under, { ...text, x: left, y: y + first.h, size: SHEET_TEXT.caption }).prims : []),
        rule([x, y + h - 0.7], [x + w, y + h - 0.7], 0.1),
      ];
    },
  };
}

/** What a thing is, and how it is told, side by side. */
export function factBlock(label: string, said: string, w: number): Block {
  const left = w * 0.36;
  const a = { x: 0, y: 0, w: left - 2, weight: 600 } as const;
  const b = { x: 0, y: 0, w: w - left };
  const h = Math.max(paragraph(label, a).h, paragraph(said, b).h) + 0.8;
  return {
    h,
    draw: (x, y) => [...paragraph(label, { ...a, x, y }).prims, ...paragraph(said, { ...b, x: x + left, y }).prims],
  };
}
