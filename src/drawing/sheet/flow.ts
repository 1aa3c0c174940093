import type { Prim } from '../paint/prim.ts';
import { paragraph, rule, SHEET_TEXT } from './ink.ts';
import { inset, type Layout, type Rect } from './paper.ts';
import type { PagePlan, SheetHead, SheetPart, Standing } from './sheet.ts';

/** A thing of a text sheet that is never cut in two. */
export interface Block {
  readonly h: number;
  /** Stays with what follows it: a heading. */
  readonly keep?: boolean;
  draw(x: number, y: number): readonly Prim[];
}

const PAD_MM = 5;
const GAP_MM = 7;
/** A column is at least this wide: some sixty letters. */
const COLUMN_MM = 82;
const HEAD_MM = 15;
/** Columns of the last page are made even to this. */
const STEP_MM = 2;

interface Laid {
  readonly block: Block;
  readonly column: number;
  readonly y: number;
}

/** As many blocks as have room in so many columns of a height, from `from` on; and which comes next. */
function fill(blocks: readonly Block[], from: number, columns: number, high: number): { laid: Laid[]; next: number } {
  const laid: Laid[] = [];
  let [column, y, i] = [0, 0, from];
  while (i < blocks.length) {
    // A heading is laid with the first thing under it.
    let upTo = i;
    while (upTo < blocks.length - 1 && blocks[upTo]?.keep) upTo++;
    const group = blocks.slice(i, upTo + 1);
    const h = group.reduce((sum, b) => sum + b.h, 0);
    if (y > 0 && y + h > high) {
      column += 1;
      y = 0;
      if (column === columns) break;
    }
    for (const block of group) {
      laid.push({ block, column, y });
      y += block.h;
    }
    i = upTo + 1;
  }
  return { laid, next: i };
}

/** The last page, its columns about as high as each other. */
function even(blocks: readonly Block[], from: number, columns: number, high: number): Laid[] {
  const total = blocks.slice(from).reduce((sum, b) => sum + b.h, 0);
  for (let h = total / columns; h < high; h += STEP_MM) {
    const { laid, next } = fill(blocks, from, columns, h);
    if (next === blocks.length) return laid;
  }
  return fill(blocks, from, columns, high).laid;
}

interface FlowPage {
  readonly title: string;
  readonly under: string;
  readonly laid: readonly Laid[];
  readonly body: Rect;
  readonly columns: number;
  readonly columnMm: number;
}

function pageParts({ title, under, laid, body, columns, columnMm }: FlowPage): SheetPart[] {
  const head = paragraph(title, { x: body.x, y: body.y, w: body.w, size: SHEET_TEXT.answer, weight: 600, most: 1 });
  const line = paragraph(under, { x: body.x, y: body.y + head.h, w: body.w, most: 1 });
  const top = body.y + HEAD_MM;
  const xOf = (column: number): number => body.x + column * (columnMm + GAP_MM);
  const last = Math.max(0, ...laid.map((l) => l.column));
  const foot = Math.max(0, ...laid.map((l) => l.y + l.block.h));
  const rules = Array.from({ length: Math.min(last, columns - 1) }, (_, i) => {
    const x = xOf(i + 1) - GAP_MM / 2;
    return rule([x, top], [x, top + foot], 0.2);
  });
  const blocks = laid.flatMap((l) => l.block.draw(xOf(l.column), top + l.y));
  return [{ clip: null, prims: [...head.prims, ...line.prims, ...rules, ...blocks] }];
}

export interface FlowSheet {
  readonly key: string;
  readonly title: string;
  readonly under: string;
  readonly documentType: string;
  /** Blocks for a column of this width in mm. */
  readonly blocks: (w: number, standing?: Standing) => readonly Block[];
}

/** The pages of a text sheet: its blocks in columns, over as many pages as they need. */
export function flowPages(sheet: FlowSheet, layout: Layout): PagePlan[] {
  const body = inset(layout.body, PAD_MM);
  const columns = Math.max(1, Math.floor((body.w + GAP_MM) / (COLUMN_MM + GAP_MM)));
  const columnMm = (body.w - (columns - 1) * GAP_MM) / columns;
  const blocks = sheet.blocks(columnMm);
  const high = body.h - HEAD_MM;
  const pages: Laid[][] = [];
  for (let at = 0; at < blocks.length; ) {
    const { laid, next } = fill(blocks, at, columns, high);
    const whole = next === blocks.length;
    pages.push(whole ? even(blocks, at, columns, high) : laid);
    if (next === at) break;
    at = next;
  }
  return pages.map((laid, i): PagePlan => {
    const part = pages.length > 1 ? `, part ${i + 1} of ${pages.length}` : '';
    const head: SheetHead = {
      title: `${sheet.title}${part}`,
      documentType: sheet.documentType,
      scale: null,
      northDeg: null,
      datum: null,
      remark: null,
    };
    return {
      key: pages.length > 1 ? `${sheet.key}#${i}` : sheet.key,
      head,
      draw: () => pageParts({ title: head.title, under: sheet.under, laid, body, columns, columnMm }),
    };
  });
}
