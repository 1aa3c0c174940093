import type { Fragment, Vec, Wish } from '../display-list.ts';
import type { TEXT_MM } from '../look/tokens.ts';
import type { Fineness } from './fineness.ts';
import type { Obstacles } from './obstacles.ts';
import type { Paper } from './paper.ts';
import type { Placed } from './tags.ts';

/** One drawing at one scale, on which labels are placed one after another. */
export interface Page {
  readonly fragments: readonly Fragment[];
  readonly paper: Paper;
  readonly to: Obstacles;
  readonly sizes: (typeof TEXT_MM)['screen' | 'sheet'];
  readonly fineness: Fineness;
}

/** Every wish of one kind in painter's order, each answered or left. */
export function answered<W extends Wish['w']>(
  { fragments }: Page,
  kind: W,
  place: (fragment: Fragment, wish: Extract<Wish, { w: W }>) => Placed | undefined,
): Placed[] {
  const found: Placed[] = [];
  for (const fragment of fragments) {
    for (const wish of fragment.wishes) {
      if (wish.w !== kind) continue;
      const placed = place(fragment, wish as Extract<Wish, { w: W }>);
      if (placed) found.push(placed);
    }
  }
  return found;
}

/** Places that no tag may cover: ends of pipes, corners, marks in line. In mm of paper. */
export function nodesOf({ fragments, paper }: Page): Vec[] {
  const nodes: Vec[] = [];
  for (const { layer, items } of fragments) {
    for (const item of items) {
      if (item.t === 'corner' || (item.t === 'mark' && layer === 'item')) nodes.push(paper.at(item.at, item.spread));
      else if (item.t === 'line' && layer === 'run') {
        item.pts.forEach((p, i) => {
          nodes.push(paper.at(p, item.spread?.[i]));
        });
      }
    }
  }
  return nodes;
}
