import type { SymbolPart } from '../../catalogue/define-point.ts';
import { itemKinds } from '../../catalogue/items.ts';
import { type Medium, PEN, TEXT_MM } from '../look/tokens.ts';
import { baselineDrop } from '../text/measure.ts';
import type { MarkPen } from './mark-pen.ts';
import type { Prim } from './prim.ts';

/** A kind this version does not know still stands in its line. */
const UNKNOWN: readonly SymbolPart[] = [{ draw: 'rect', x: -2, y: -1.3, w: 4, h: 2.6, fill: false }];
/** Half the height of the strip of paper that takes the pipe out from under an open mark. */
const BLANK_MM = 0.6;

function extent(parts: readonly SymbolPart[]): { from: number; upTo: number } {
  const xs = parts.flatMap((p) =>
    p.draw === 'line'
      ? [p.from[0], p.to[0]]
      : p.draw === 'rect'
        ? [p.x, p.x + p.w]
        : p.draw === 'ring'
          ? [p.x - p.r, p.x + p.r]
          : [],
  );
  return { from: Math.min(...xs, 0), upTo: Math.max(...xs, 0) };
}

function partPrim(m: MarkPen, part: SymbolPart, medium: Medium): Prim {
  const stroke = m.stroke(m.ink, PEN.symbol * 0.8);
  const fill = 'fill' in part && part.fill ? m.ink : m.look.paper;
  if (part.draw === 'line') return m.path([part.from, part.to], { stroke });
  if (part.draw === 'ring') return m.circle(part.x, part.y, part.r, { fill, stroke });
  if (part.draw === 'rect') {
    const { x, y, w, h } = part;
    const corners = [
      [x, y],
      [x + w, y],
      [x + w, y + h],
      [x, y + h],
    ] as const;
    return m.path(corners, { closed: true, fill, stroke });
  }
  const size = TEXT_MM[medium].dimension * 0.68;
  const [x, y] = m.pt(part.x, part.y);
  return {
    p: 'text',
    x,
    y: y + baselineDrop(size) * m.unit,
    text: part.text,
    size: size * m.unit,
    weight: 600,
    align: 'middle',
    ink: m.look.ink('ink1'),
    turnDeg: 0,
  };
}

/** The mark of an in-line item, from the catalogue. */
export function itemPrims(m: MarkPen, kind: string, medium: Medium): Prim[] {
  const parts = itemKinds.get(kind)?.mark ?? UNKNOWN;
  const { from, upTo } = extent(parts);
  const blank = m.path(
    [
      [from, -BLANK_MM],
      [upTo, -BLANK_MM],
      [upTo, BLANK_MM],
      [from, BLANK_MM],
    ],
    { closed: true, fill: m.look.paper },
  );
  return [...(upTo - from > 1.5 ? [blank] : []), ...parts.map((part) => partPrim(m, part, medium))];
}
