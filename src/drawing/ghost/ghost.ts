import type { Fragment, Item, LineStyle, PainterGroup } from '../display-list.ts';

/** What is shown of something that is not here: its building, its things and its pipes. */
const GROUPS: ReadonlySet<PainterGroup> = new Set(['wall', 'opening', 'point', 'run', 'item']);

/**
 * One hairline in one tint and one grain, finer than the beat of any pipe and than any hidden edge: no service, no state,
 * nothing hollow, and no leader or dimension can be taken for it.
 */
const FAINT: LineStyle = { ink: 'ink3', pen: 0.25, dash: [0.45, 0.6], fit: false };

/** Where a pipe comes up or goes down: the one mark that matters to the floor over or under it. */
const UPRIGHTS: ReadonlySet<string> = new Set(['rise', 'drop']);

/** A fragment that is drawn faint. */
export interface GhostPart {
  readonly fragment: Fragment;
  readonly items: readonly Item[];
}

function faint(item: Item): Item[] {
  if (item.t === 'line') {
    const { t, pts, closed, roundMm, trim, spread, offsetsMm, scales } = item;
    return [
      {
        t,
        pts,
        style: FAINT,
        ...(closed === undefined ? {} : { closed }),
        ...(roundMm === undefined ? {} : { roundMm }),
        ...(trim === undefined ? {} : { trim }),
        ...(spread === undefined ? {} : { spread }),
        ...(offsetsMm === undefined ? {} : { offsetsMm }),
        ...(scales === undefined ? {} : { scales }),
      },
    ];
  }
  if (item.t === 'corner') return [{ ...item, style: FAINT }];
  if (item.t === 'area') return item.edge ? [{ t: 'area', rings: item.rings, fill: 'none', edge: FAINT }] : [];
  return item.t === 'mark' && UPRIGHTS.has(item.mark) ? [{ ...item, ink: 'ink3' }] : [];
}

/** A fragment never changes, so neither does its ghost. */
const made = new WeakMap<Fragment, GhostPart | null>();

function ghostOf(fragment: Fragment): GhostPart | null {
  const known = made.get(fragment);
  if (known !== undefined) return known;
  const shown = GROUPS.has(fragment.layer) ? fragment.items : [];
  const items = shown.filter((i) => fragment.layer !== 'item' || i.t === 'mark').flatMap(faint);
  const ghost = items.length === 0 ? null : { fragment, items };
  made.set(fragment, ghost);
  return ghost;
}

/**
 * Fragments of another floor, or of another case, as they lie faint under what is there: outlines only, without words,
 * tags or fills. `besides`: what is drawn anyway and needs no ghost. The same fragment gives the same part.
 */
export function ghostsOf(fragments: readonly Fragment[], besides: readonly Fragment[] = []): readonly GhostPart[] {
  const drawn = new Map(besides.map((f) => [f.id, f]));
  const parts: GhostPart[] = [];
  for (const fragment of fragments) {
    const here = drawn.get(fragment.id);
    // The walls of a floor are one body: where one of them differs, all of it is laid under the one that is drawn.
    if (here && (fragment.layer !== 'wall' || here.items === fragment.items)) continue;
    const ghost = ghostOf(fragment);
    if (ghost) parts.push(ghost);
  }
  return parts;
}
