import type { AreaItem, Item, MarkItem, TextItem } from '../display-list.ts';
import type { Look } from '../look/style-of.ts';
import { PEN, TEXT_MM } from '../look/tokens.ts';
import { baselineDrop, textWidth } from '../text/measure.ts';
import { findingPrims } from './finding-prims.ts';
import { type Frame, place } from './frame.ts';
import { slants } from './hatch.ts';
import { itemPrims } from './item-prims.ts';
import { cornerPrims, linePrims } from './line-prims.ts';
import { hasRoom, markPen } from './mark-pen.ts';
import { PIPE_MARKS } from './pipe-marks.ts';
import { type Prim, plate, polyline, type Seg } from './prim.ts';

const SLAB = { stepMm: 2.6, twinMm: 0.8, penMm: 0.2 };

/** Room round the words of a tag, and its corner, in paper mm. */
export const PLATE = { padMm: 1.1, highMm: 1.6, cornerMm: 0.9, edgeMm: 0.3 } as const;

function areaPrims(item: AreaItem, frame: Frame, look: Look): Prim[] {
  const rings = item.rings.map((ring) => ring.map((p) => place(frame, p)));
  const path = rings.flatMap((ring): Seg[] => polyline(ring, true));
  const fill = look.fill(item.fill);
  const u = frame.perPaperMm;
  const prims: Prim[] = [];
  if (fill !== null) prims.push({ p: 'path', path, fill });
  if (item.fill === 'slab') {
    const lines = slants(rings, SLAB.stepMm * u * Math.SQRT2, [0, SLAB.twinMm * u * Math.SQRT2]);
    const width = Math.max(frame.leastPen * 0.75, SLAB.penMm * u);
    prims.push({
      p: 'path',
      path: lines.flatMap((line) => polyline(line)),
      stroke: { ink: look.ink('wallEdge'), width, cap: 'butt', join: 'miter' },
    });
  }
  if (item.edge) {
    const { edge } = item;
    const width = Math.max(frame.leastPen, edge.pen * u);
    const dash = edge.dash.length > 0 ? { dash: edge.dash.map((d) => d * u), dashAt: 0 } : {};
    prims.push({ p: 'path', path, stroke: { ink: look.ink(edge.ink), width, cap: 'butt', join: 'miter', ...dash } });
  }
  return prims;
}

/** Size of the plate of a tag in paper mm. */
export function plateMm(text: string, sizeMm: number): { w: number; h: number } {
  return { w: textWidth(text, sizeMm, 600) + 2 * PLATE.padMm, h: sizeMm + PLATE.highMm };
}

function textPrims(item: TextItem, frame: Frame, look: Look): Prim[] {
  const [x, y] = place(frame, item.at, item.spread, item.offsetMm);
  const mm = TEXT_MM[frame.medium][item.size];
  const u = frame.perPaperMm;
  const size = mm * u;
  const prims: Prim[] = [];
  const width = textWidth(item.text, size, item.weight);
  const left = item.align === 'left' ? x : item.align === 'right' ? x - width : x - width / 2;
  if (item.plate !== undefined) {
    const { w, h } = plateMm(item.text, mm);
    const path = plate(left - PLATE.padMm * u, y - (h * u) / 2, w * u, h * u, PLATE.cornerMm * u);
    const edge = { ink: look.ink(item.plate), width: Math.max(frame.leastPen, PLATE.edgeMm * u) };
    prims.push({ p: 'path', path, fill: look.paper, stroke: { ...edge, cap: 'butt', join: 'miter' } });
  }
  const turned = item.turnDeg % 360 !== 0;
  prims.push({
    p: 'text',
    // A turned line of text turns about its own middle line, so the drop to the baseline turns with it.
    x: turned ? x + baselineDrop(size) * Math.sin((item.turnDeg * Math.PI) / 180) : x,
    y: y + baselineDrop(size) * (turned ? Math.cos((item.turnDeg * Math.PI) / 180) : 1),
    text: item.text,
    size,
    weight: item.weight,
    align: item.align,
    ink: look.ink(item.ink),
    turnDeg: -item.turnDeg,
    ...(item.halo ? { halo: { ink: look.halo, width: PEN.halo * u } } : {}),
  });
  if (item.underline === 'dotted') {
    const under = y + baselineDrop(size) + 0.22 * size;
    prims.push({
      p: 'path',
      path: polyline([
        [left, under],
        [left + width, under],
      ]),
      stroke: {
        ink: look.ink(item.ink),
        width: Math.max(frame.leastPen, 0.3 * u),
        cap: 'round',
        join: 'round',
        dash: [0.01, 0.9 * u],
        dashAt: 0,
      },
    });
  }
  return prims;
}

function markPrims(item: MarkItem, frame: Frame, look: Look): Prim[] {
  if (!hasRoom(item, frame)) return [];
  const m = markPen(item, frame, look);
  if (item.mark.startsWith('finding:')) return findingPrims(m, item.mark.slice(8), item.text ?? '', frame.medium);
  if (item.mark.startsWith('item:')) return itemPrims(m, item.mark.slice(5), frame.medium);
  const draw = PIPE_MARKS[item.mark] ?? PIPE_MARKS.dot;
  return draw ? draw(m, item.sizeMm ?? 0) : [];
}

/** One item as plain shapes in the units of the frame. */
export function primsOf(item: Item, frame: Frame, look: Look): Prim[] {
  switch (item.t) {
    case 'line':
      return linePrims(item, frame, look);
    case 'corner':
      return cornerPrims(item, frame, look);
    case 'area':
      return areaPrims(item, frame, look);
    case 'mark':
      return markPrims(item, frame, look);
    case 'text':
      return textPrims(item, frame, look);
  }
}
