import type { SymbolPart } from '../../catalogue/define-point.ts';
import type { Item, LineStyle, Vec, Wish } from '../display-list.ts';

/** Corners of a circle drawn as a polygon: smooth enough at any scale a sheet uses. */
const SIDES = 32;

/** A symbol laid on the view by `at`, which takes mm of the symbol's own plane; its letters are asked for apart. */
export function symbolItems(
  parts: readonly SymbolPart[],
  at: (x: number, y: number) => Vec,
  edge: LineStyle,
  half: Vec,
  insideOnly: boolean,
): { items: Item[]; letters: Wish[] } {
  const items: Item[] = [];
  const letters: Wish[] = [];
  for (const part of parts) {
    if (part.draw === 'line') items.push({ t: 'line', pts: [at(...part.from), at(...part.to)], style: edge });
    else if (part.draw === 'letter')
      letters.push({ w: 'letter', at: at(part.x, part.y), text: part.text, ink: edge.ink, half, insideOnly });
    else {
      const ring =
        part.draw === 'rect'
          ? [
              at(part.x, part.y),
              at(part.x + part.w, part.y),
              at(part.x + part.w, part.y + part.h),
              at(part.x, part.y + part.h),
            ]
          : Array.from({ length: SIDES }, (_, i) => {
              const a = (i * 2 * Math.PI) / SIDES;
              return at(part.x + part.r * Math.cos(a), part.y + part.r * Math.sin(a));
            });
      items.push({ t: 'area', rings: [ring], fill: part.fill ? 'ink' : 'paper', edge });
    }
  }
  return { items, letters };
}
