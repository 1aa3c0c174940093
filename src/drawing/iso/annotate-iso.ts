import type { Box, DisplayList, Fragment, Item, Vec } from '../display-list.ts';
import { boxAround, union } from '../fragments/fragment.ts';
import type { Fineness } from '../labels/fineness.ts';
import { placeName } from '../labels/names.ts';
import { type Obstacles, obstaclesOf } from '../labels/obstacles.ts';
import { nodesOf } from '../labels/page.ts';
import { boxAt, grow, type Paper, paperAt } from '../labels/paper.ts';
import { placeFlags } from '../labels/place-flags.ts';
import { placeTags, tagLegs } from '../labels/tags.ts';
import { type Medium, TEXT_MM } from '../look/tokens.ts';
import type { IsoDrawing } from './iso-drawing.ts';
import { placeLength } from './place-length.ts';
import { placeLevel } from './place-level.ts';
import { slantPlane } from './slant-plane.ts';

export interface IsoChoices {
  /** mm of the plane for one mm of paper: 50 at 1:50. */
  readonly mmPerPaperMm: number;
  readonly medium?: Medium;
  /** What shows, in mm of the plane. Undefined: all of it. */
  readonly visible?: Box;
  /** What stands over the drawing, in mm of the plane: no label goes there. */
  readonly taken?: readonly Box[];
  /** Lengths from centre to centre. */
  readonly lengths: boolean;
  /** Floors of the rooms that pipes run through, faint. */
  readonly rooms: boolean;
}

/** An isometric at one scale, as shapes in painter's order. */
export interface IsoList extends Pick<DisplayList, 'box' | 'items'> {
  /** Lengths in view that found no free place at this scale. */
  readonly untold: number;
  /** So many pipes are in view that nothing is written at them. */
  readonly crowded: boolean;
}

const CLOSE = 30;
const COARSE = 170;
const EDGE_MM = 0.6;
/** Kept free about every end and corner, and about what stands in line, mm of paper. */
const NODE_MM = 0.5;
const ITEM_MM = 1.9;
/** With more lengths than this in view, or at a smaller scale, one that has no room beside its leg is left out at once. */
const MOST_LED = 150;
const LED_FROM = 75;
/** With more pipes than this in view none of them could be read with words at it. */
const MOST_TOLD = 600;

const finenessOf = (k: number, medium: Medium): Fineness => {
  if (medium === 'sheet' || k <= CLOSE) return 'close';
  return k < COARSE ? 'usual' : 'coarse';
};

const scaled = (b: Box, k: number): Box => ({ minX: b.minX / k, minY: b.minY / k, maxX: b.maxX / k, maxY: b.maxY / k });

const meets = (a: Box, b: Box): boolean => a.minX <= b.maxX && b.minX <= a.maxX && a.minY <= b.maxY && b.minY <= a.maxY;

/** No label lies on an end, a corner or something in line. */
function keepNodesFree(fragments: readonly Fragment[], paper: Paper, to: Obstacles): readonly Vec[] {
  const nodes = nodesOf({ fragments, paper, to, sizes: TEXT_MM.screen, fineness: 'usual' });
  for (const [x, y] of nodes) to.claim(boxAt(x, y, 2 * NODE_MM, 2 * NODE_MM));
  for (const item of fragments.flatMap((f) => (f.layer === 'item' ? f.items : []))) {
    if (item.t !== 'mark' || !item.mark.startsWith('item:')) continue;
    const [x, y] = paper.at(item.at);
    to.claim(boxAt(x, y, 2 * ITEM_MM, 2 * ITEM_MM));
  }
  return nodes;
}

interface Told {
  readonly labels: readonly { readonly id: string; readonly items: readonly Item[]; readonly boxes: readonly Box[] }[];
  readonly untold: number;
}

/** What is written at the fragments in view, one kind after another: what has the least choice goes first. */
function tell(
  drawing: IsoDrawing,
  fragments: readonly Fragment[],
  rooms: readonly Fragment[],
  choices: IsoChoices,
): Told {
  const { mmPerPaperMm: k, visible } = choices;
  const medium = choices.medium ?? 'screen';
  const sizes = TEXT_MM[medium];
  const paper = paperAt(k);
  const to = obstaclesOf(fragments, paper, visible && grow(scaled(visible, k), -EDGE_MM));
  for (const box of choices.taken ?? []) to.claim(scaled(box, k));
  const nodes = keepNodesFree(fragments, paper, to);
  const fineness = finenessOf(k, medium);
  const labels: Told['labels'][number][] = [];
  const add = (found: readonly { id: string; items: readonly Item[]; box: Box }[]): void => {
    for (const { id, items, box } of found) labels.push({ id, items, boxes: [box] });
  };
  add(placeTags(tagLegs(fragments, paper, visible), paper, sizes, fineness, to, nodes));
  let untold = 0;
  if (choices.lengths) {
    const inView = drawing.lengths.filter((l) => !visible || meets(boxAround([l.a, l.b]), visible));
    const led = inView.length <= MOST_LED && (medium === 'sheet' || k <= LED_FROM);
    for (const length of inView) {
      const placed = placeLength(length, sizes.dimension, paper, to, led);
      if (placed) labels.push(placed);
      else untold += 1;
    }
  }
  add(drawing.levels.flatMap((level) => placeLevel(level, sizes.dimension, paper, to) ?? []));
  add(placeFlags({ fragments, paper, to, sizes, fineness }, []).placed);
  add(
    rooms.flatMap((f) =>
      f.wishes.flatMap((w) => (w.w === 'name' && placeName(f, { ...w, small: true }, sizes, paper, to)) || []),
    ),
  );
  return { labels, untold };
}

/** What shows how legs lie that go along no axis. A fall has its wedge for that. */
function slantsOf(drawing: IsoDrawing, k: number): IsoList['items'] {
  return drawing.legs.flatMap((leg) => {
    if (leg.runsDownhill || leg.map === 'stretches') return [];
    const items = slantPlane(drawing.plane.onAxes(leg.placeA.at), drawing.plane.onAxes(leg.placeB.at), k);
    return items.length > 0 ? [{ group: 'joist' as const, id: leg.record.id, items }] : [];
  });
}

/**
 * Places what an isometric has to tell at one scale. No two labels overlap and none covers an end, a corner or something in
 * line; what finds no free place is left out, and counted where it is a length.
 */
export function annotateIso(drawing: IsoDrawing, choices: IsoChoices): IsoList {
  const { mmPerPaperMm: k, visible } = choices;
  const shown = (f: Fragment): boolean => !visible || meets(f.box, visible);
  const fragments = drawing.fragments.filter(shown);
  const rooms = choices.rooms ? drawing.rooms.filter(shown) : [];
  const crowded = fragments.filter((f) => f.layer === 'run').length > MOST_TOLD;
  const { labels, untold } = crowded ? { labels: [], untold: 0 } : tell(drawing, fragments, rooms, choices);
  const taken = labels.flatMap((l) => l.boxes.map((b) => scaled(b, 1 / k)));
  const all = [...rooms, ...fragments];
  return {
    box: all.length + taken.length > 0 ? union([...all.map((f) => f.box), ...taken]) : boxAround([]),
    untold,
    crowded,
    items: [
      ...rooms.map((f) => ({ group: f.layer, id: f.id, items: f.items })),
      ...slantsOf(drawing, k),
      ...fragments.map((f) => ({ group: f.layer, id: f.id, items: f.items })),
      ...labels.map((l) => ({ group: 'label' as const, id: l.id, items: l.items })),
    ],
  };
}
