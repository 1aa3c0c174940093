import type { Plan } from '../plan/plan.ts';
import type { Finding } from '../report/finding.ts';
import type { Box, DisplayList, Fragment, Vec, View } from './display-list.ts';
import { boxAround, union } from './fragments/fragment.ts';
import { placeDimension } from './labels/dimensions.ts';
import { placeFindings, SPOT_MM } from './labels/finding-marks.ts';
import { FLAGS_GO, finenessOf, TAGS_GO } from './labels/fineness.ts';
import { lateFigures } from './labels/late-figures.ts';
import { letterBeside, letterInside } from './labels/letters.ts';
import { measuredLegs } from './labels/measured-legs.ts';
import { placeName } from './labels/names.ts';
import { obstaclesOf } from './labels/obstacles.ts';
import { answered, nodesOf, type Page } from './labels/page.ts';
import { boxAt, grow, paperAt } from './labels/paper.ts';
import { placeFlags, type ThingName } from './labels/place-flags.ts';
import { type Placed, placeTags, tagLegs } from './labels/tags.ts';
import { type Medium, TEXT_MM } from './look/tokens.ts';
import { NEAR_FACE_MM } from './pipes/pipes-in-view.ts';
import { type Plane, planeOf } from './pipes/plane.ts';

export interface AnnotateOptions {
  readonly plan: Plan;
  readonly view: View;
  /** mm of the plane for one mm of paper: 50 at 1:50. */
  readonly mmPerPaperMm: number;
  readonly medium?: Medium;
  /** What shows, in mm of the plane: no label reaches past it. Undefined: all of it. */
  readonly visible?: Box;
  /** What stands over the drawing, in mm of the plane: no label goes there. */
  readonly taken?: readonly Box[];
  readonly findings?: readonly Finding[];
  /** Runs whose legs get their lengths, centre to centre. */
  readonly measured?: ReadonlySet<string>;
  /** Walls, openings and points that get the figures of their place. */
  readonly placed?: readonly { readonly map: string; readonly id: string }[];
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

/** Between a label and the edge of what shows. */
const EDGE_MM = 0.6;
/** Findings nearer than this on paper share one mark. */
const TOGETHER_MM = { close: 4, usual: 6, coarse: 12 } as const;

/** The spot of a clash is ringed: nothing is written over it. */
const spotOf = (f: Finding, at: Vec | undefined): { at: Vec; key: string }[] =>
  f.at?.ring && at ? [{ at, key: f.key }] : [];

const onPaper = (b: Box, k: number): Box => ({
  minX: b.minX / k,
  minY: b.minY / k,
  maxX: b.maxX / k,
  maxY: b.maxY / k,
});

/**
 * Places the labels that fragments wish for, at one scale, and puts all of it in painter's order. No two labels
 * overlap and none reaches out of what shows: what finds no free place is left out. A finding whose place shows always has
 * its mark, or is counted by the mark beside it.
 */
export function annotate(fragments: readonly Fragment[], options: AnnotateOptions): DisplayList {
  const { plan, view, mmPerPaperMm: k } = options;
  const medium = options.medium ?? 'screen';
  const sizes = TEXT_MM[medium];
  const fineness = finenessOf(k, medium);
  const paper = paperAt(k);
  const within = options.visible && grow(onPaper(options.visible, k), -EDGE_MM);
  const to = obstaclesOf(fragments, paper, within);
  for (const box of options.taken ?? []) to.claim(onPaper(box, k));
  const plane = planeOf(plan, view);
  const page: Page = { fragments, paper, to, sizes, fineness };
  const findings = options.findings ?? [];
  for (const { at, key } of findings.flatMap((f) => spotOf(f, placeIn(plane, f)))) {
    const [x, y] = paper.at(at);
    to.addBox(boxAt(x, y, 2 * SPOT_MM, 2 * SPOT_MM), 'mark', key);
  }
  const tagged = k <= TAGS_GO;
  const outside: ThingName[] = [];
  const inside = answered(page, 'name', (fragment, wish) => {
    const placed = wish.small && tagged ? placeName(fragment, wish, sizes, paper, to) : undefined;
    if (wish.small && !placed) outside.push({ fragment, wish });
    return placed;
  });
  const labels: Placed[] = [...inside];
  if (tagged) {
    labels.push(
      ...answered(page, 'dimension', (f, wish) => placeDimension(f.id, wish, sizes.dimension, paper, to)),
      ...answered(page, 'letter', (f, wish) =>
        wish.insideOnly ? undefined : letterInside(f, wish, sizes.small, paper, to),
      ),
      ...placeTags(tagLegs(fragments, paper, options.visible), paper, sizes, fineness, to, nodesOf(page)),
    );
  }
  const { placed: marked } = placeFindings(
    findings,
    (finding) => placeIn(plane, finding),
    medium,
    sizes.small,
    TOGETHER_MM[fineness],
    paper,
    to,
  );
  if (tagged) {
    labels.push(
      ...answered(page, 'name', (fragment, wish) => {
        if (wish.small) return undefined;
        const short = fineness === 'coarse' && wish.text !== '';
        return placeName(fragment, short ? { ...wish, second: null } : wish, sizes, paper, to);
      }),
      ...[
        ...(lateFigures.of?.(plan, plane, options.placed ?? []) ?? []),
        ...(options.measured ? measuredLegs(plan, fragments, options.measured) : []),
      ].flatMap(({ id, wish }) => {
        const choice = { free: true, bare: fineness === 'coarse' };
        return placeDimension(id, wish, sizes.dimension, paper, to, choice) ?? [];
      }),
    );
    const flags = k < FLAGS_GO ? placeFlags(page, outside) : { placed: [], flagged: new Set<Fragment>() };
    labels.push(...flags.placed);
    const lettered = new Set(labels.flatMap((l) => (l.letter === undefined ? [] : [l.letter])));
    labels.push(
      ...answered(page, 'letter', (f, wish) => {
        if (lettered.has(wish) || (wish.insideOnly && flags.flagged.has(f))) return undefined;
        if (wish.insideOnly) return letterInside(f, wish, sizes.small, paper, to);
        return fineness === 'coarse' ? undefined : letterBeside(f, wish, sizes.small, paper, to);
      }),
    );
  }
  const inPlane = [...labels, ...marked].map(({ box: b }) => onPaper(b, 1 / k));
  return {
    view,
    box: fragments.length + inPlane.length > 0 ? union([...fragments.map((f) => f.box), ...inPlane]) : boxAround([]),
    items: [
      ...fragments.map((f) => ({ group: f.layer, id: f.id, items: f.items })),
      ...labels.map((l) => ({
        group: 'label' as const,
        id: l.id,
        items: l.items,
        ...(l.figure ? { figure: l.figure } : {}),
      })),
      ...marked.map((l) => ({ group: 'finding' as const, id: l.id, items: l.items })),
    ],
  };
}
