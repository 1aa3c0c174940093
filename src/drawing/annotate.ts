import type { Plan } from '../plan/plan.ts';
import type { Finding } from '../report/finding.ts';
import type { Box, DisplayList, Fragment, Vec, View } from './display-list.ts';
import { boxAround, union } from './fragments/fragment.ts';
import { placeDimension } from './labels/dimensions.ts';
import { placeFindings } from './labels/finding-marks.ts';
import { flagsOf } from './labels/flag-wishes.ts';
import { placeFlag } from './labels/flags.ts';
import { measuredLegs } from './labels/measured-legs.ts';
import { placeLetter, placeName } from './labels/names.ts';
import { obstaclesOf } from './labels/obstacles.ts';
import { paperAt } from './labels/paper.ts';
import { type Placed, placeTags, tagLegs } from './labels/tags.ts';
import { type Medium, TEXT_MM } from './look/tokens.ts';
import { NEAR_FACE_MM } from './pipes/pipes-in-view.ts';
import { facePlane, type Plane, planPlane } from './pipes/plane.ts';

/** At this scale and smaller, flags go; past the second, tags go. */
export const FLAGS_GO = 100;
export const TAGS_GO = 200;

export interface AnnotateOptions {
  readonly plan: Plan;
  readonly view: View;
  /** mm of the plane for one mm of paper: 50 at 1:50. */
  readonly mmPerPaperMm: number;
  readonly medium?: Medium;
  /** What shows: tags go on the part of a leg in here. Undefined: all of it. */
  readonly visible?: Box;
  readonly findings?: readonly Finding[];
  /** Runs whose legs get their lengths, centre to centre. */
  readonly measured?: ReadonlySet<string>;
}

/** Where a finding is in the view; undefined where it is not there. */
function placeIn(plane: Plane | undefined, finding: Finding): Vec | undefined {
  const { at } = finding;
  if (!plane || !at || at.storey !== plane.storey) return undefined;
  if (plane.view.kind === 'face') {
    const out = plane.toReader(at);
    if (out > NEAR_FACE_MM || out < -NEAR_FACE_MM) return undefined;
  }
  return plane.at(at);
}

/**
 * Places the labels that fragments wish for, at one scale, and puts all of it in painter's order. No two labels
 * overlap; what finds no free place is left out, but a room's name and a finding's mark always show.
 */
export function annotate(fragments: readonly Fragment[], options: AnnotateOptions): DisplayList {
  const { plan, view, mmPerPaperMm: k } = options;
  const medium = options.medium ?? 'screen';
  const sizes = TEXT_MM[medium];
  const paper = paperAt(k);
  const to = obstaclesOf(fragments, paper);
  const plane = view.kind === 'plan' ? planPlane(view.storey) : facePlane(plan, view.wall, view.side);
  const labels: Placed[] = [];
  const each = <W extends Fragment['wishes'][number]['w']>(
    kind: W,
    place: (fragment: Fragment, wish: Extract<Fragment['wishes'][number], { w: W }>) => Placed | undefined,
  ): void => {
    for (const fragment of fragments) {
      for (const wish of fragment.wishes) {
        if (wish.w !== kind) continue;
        const placed = place(fragment, wish as Extract<typeof wish, { w: W }>);
        if (placed) labels.push(placed);
      }
    }
  };

  if (k <= TAGS_GO) {
    each('dimension', (fragment, wish) => placeDimension(fragment.id, wish, sizes.dimension, paper, to));
    for (const { id, wish } of options.measured ? measuredLegs(plan, fragments, options.measured) : []) {
      const placed = placeDimension(id, wish, sizes.dimension, paper, to);
      if (placed) labels.push(placed);
    }
  }
  const nodes: Vec[] = [];
  for (const { layer, items } of fragments) {
    for (const item of items) {
      if (item.t === 'mark' && layer === 'item') nodes.push(paper.at(item.at, item.spread));
      else if (item.t === 'corner') nodes.push(paper.at(item.at, item.spread));
      else if (item.t === 'line' && layer === 'run') {
        item.pts.forEach((p, i) => {
          nodes.push(paper.at(p, item.spread?.[i]));
        });
      }
    }
  }
  if (k <= TAGS_GO) {
    labels.push(...placeTags(tagLegs(fragments, paper, options.visible), paper, sizes.tag, to, nodes));
    each('letter', (fragment, wish) =>
      wish.insideOnly ? undefined : placeLetter(fragment, wish, sizes.tag, paper, to),
    );
  }
  const marked = placeFindings(options.findings ?? [], (f) => placeIn(plane, f), medium, sizes.tag, paper, to).placed;
  if (k <= TAGS_GO) each('name', (fragment, wish) => placeName(fragment, wish, sizes, paper, to));
  const flagged = new Set<Fragment>();
  if (k < FLAGS_GO) {
    for (const { fragment, wish } of flagsOf(fragments, paper)) {
      const placed = placeFlag(
        { id: fragment.id, at: wish.at, spread: wish.spread, clearMm: wish.clearMm ?? 0, along: wish.along },
        { what: wish.what, how: wish.how, whatMm: sizes.flag, howMm: sizes.flagSecond },
        paper,
        to,
      );
      if (!placed) continue;
      labels.push(placed);
      flagged.add(fragment);
    }
  }
  if (k <= TAGS_GO) {
    each('letter', (fragment, wish) =>
      wish.insideOnly && !flagged.has(fragment) ? placeLetter(fragment, wish, sizes.tag, paper, to) : undefined,
    );
  }
  const onPaper = [...labels, ...marked].map((l) => l.box);
  const inPlane = onPaper.map((b) => ({ minX: b.minX * k, minY: b.minY * k, maxX: b.maxX * k, maxY: b.maxY * k }));
  return {
    view,
    box: fragments.length + inPlane.length > 0 ? union([...fragments.map((f) => f.box), ...inPlane]) : boxAround([]),
    items: [
      ...fragments.map((f) => ({ group: f.layer, id: f.id, items: f.items })),
      ...labels.map((l) => ({ group: 'label' as const, id: l.id, items: l.items })),
      ...marked.map((l) => ({ group: 'finding' as const, id: l.id, items: l.items })),
    ],
  };
}
