import type { Box, Fragment, Item, PainterGroup, Vec, Wish } from '../display-list.ts';

const NOTHING: Box = { minX: 0, minY: 0, maxX: 0, maxY: 0 };

export function boxAround(pts: Iterable<Vec>): Box {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (const [x, y] of pts) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return minX <= maxX ? { minX, minY, maxX, maxY } : NOTHING;
}

export function union(boxes: readonly Box[]): Box {
  return boxAround(
    boxes.flatMap((b): Vec[] => [
      [b.minX, b.minY],
      [b.maxX, b.maxY],
    ]),
  );
}

/** Places an item passes through, in mm of the plane: for boxes, culling and hit tests. */
export function pointsOf(item: Item): readonly Vec[] {
  if (item.t === 'line') return item.pts;
  if (item.t === 'area') return item.rings.flat();
  return [item.at];
}

export function makeFragment(
  id: string,
  map: string,
  layer: PainterGroup,
  items: readonly Item[],
  wishes: readonly Wish[] = [],
): Fragment {
  const wished = wishes.flatMap((w): Vec[] =>
    w.w === 'tag' ? [w.from, w.to] : w.w === 'dimension' ? [w.a, w.b] : [w.at],
  );
  return { id, map, layer, items, wishes, box: boxAround([...items.flatMap((item) => pointsOf(item)), ...wished]) };
}
