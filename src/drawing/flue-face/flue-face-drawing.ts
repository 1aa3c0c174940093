import { aliveIn } from '../../network/cases.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { FlueFace } from '../../report/flue-face.ts';
import type { Box, Item, Vec } from '../display-list.ts';
import { boxAround, pointsOf, union } from '../fragments/fragment.ts';
import { grow } from '../labels/paper.ts';
import { distanceItems } from './distance-items.ts';
import { type DrawnDistance, type LaidDistance, layDistances } from './distance-lanes.ts';
import { type Elevation, elevationOf } from './elevation.ts';
import { groundLines, storeyLines, wallsAndRoof } from './elevation-building.ts';
import { openingParts } from './elevation-opening.ts';
import { pointOn, terminalParts, thingParts } from './elevation-things.ts';
import { planStrip } from './plan-strip.ts';
import { placeWords, type WordWish } from './word-labels.ts';
import { worstFirst } from './worst-first.ts';

/** Past the house, so that the elevation does not touch what is under it. */
const UNDER_MM = 700;
const NEAR_MM = 500;

/** The face of a terminal as it is at every scale; figures are laid for one scale at a time. */
export interface FlueFaceDrawing {
  readonly elevation: Elevation;
  /** What is filled: under a picture, where there is one. */
  readonly ground: readonly Item[];
  readonly lines: readonly Item[];
  readonly words: readonly WordWish[];
  readonly distances: readonly DrawnDistance[];
  /** mm of the plane: everything, and only the terminal with what it is measured to. */
  readonly box: Box;
  readonly near: Box;
  /** Where the terminal is, mm of the plane. */
  readonly terminal: Box;
}

export interface LaidFigures {
  readonly items: readonly Item[];
  readonly laid: readonly LaidDistance[];
}

const boxOfItems = (items: readonly Item[]): Box => boxAround(items.flatMap((i) => pointsOf(i)));

/**
 * The outside of the wall a terminal comes out of, as data. `clear`: openings and walls are lines only, so that a picture
 * under them shows. Undefined where the terminal has no wall and there is no house either.
 */
export function flueFaceDrawing(plan: Plan, chosen: Case, face: FlueFace, clear = false): FlueFaceDrawing | undefined {
  const alive = aliveIn(plan, chosen);
  const elevation = elevationOf(plan, face, alive);
  if (!elevation) return undefined;
  const house = wallsAndRoof(plan, elevation);
  const parts = [
    storeyLines(plan, elevation),
    openingParts(plan, elevation, alive, clear),
    groundLines(plan, elevation),
    thingParts(plan, elevation, alive, face, clear),
    terminalParts(plan, elevation, face.terminal),
  ];
  const above = [...house.ground, ...house.lines, ...parts.flatMap((p) => p.items)];
  const facade = boxOfItems(above);
  const strip = planStrip(plan, elevation, face, alive, facade.minY - UNDER_MM);
  const distances = joined(
    worstFirst(face).map((d): DrawnDistance => {
      const at = d.distance.shows === 'plan' && strip ? strip.at : elevation.at;
      return { ...d, a: at(d.distance.from), b: at(d.distance.to), also: [] };
    }),
  );
  const terminal = terminalBox(plan, elevation, face);
  const ends = distances.filter((d) => d.distance.shows === 'face').flatMap((d) => [d.a, d.b]);
  return {
    elevation,
    ground: house.ground,
    lines: [...house.lines, ...parts.flatMap((p) => p.items), ...(strip?.items ?? [])],
    words: [...house.words, ...parts.flatMap((p) => p.words), ...(strip?.words ?? [])],
    distances,
    box: union([
      facade,
      ...(strip ? [strip.box] : []),
      boxAround(distances.flatMap((d) => [d.a, d.b]).concat(cornersOf(facade))),
    ]),
    near: grow(boxAround([...ends, ...cornersOf(terminal)]), NEAR_MM),
    terminal,
  };
}

const cornersOf = (b: Box): Vec[] => [
  [b.minX, b.minY],
  [b.maxX, b.maxY],
];

function terminalBox(plan: Plan, elevation: Elevation, face: FlueFace): Box {
  const point = plan.points[face.terminal];
  const on = point && pointOn(plan, point, elevation);
  if (on) return { minX: on.from, maxX: on.upTo, minY: on.low, maxY: on.high };
  return boxAround([elevation.at(face.at)]);
}

/** Those between the same two places are one line, drawn as its worst. */
function joined(all: readonly DrawnDistance[]): DrawnDistance[] {
  const found = new Map<string, DrawnDistance>();
  for (const d of all) {
    const ends = [...d.a, ...d.b].map((n) => Math.round(n)).join(' ');
    const first = found.get(ends);
    found.set(ends, first ? { ...first, also: [...first.also, d] } : d);
  }
  return [...found.values()];
}

/** Is it the one that is named, or drawn for it too? */
export const isDrawnFor = (drawn: DrawnDistance, key: string | null): boolean =>
  drawn.key === key || drawn.also.some((d) => d.key === key);

const scaled = (b: Box, k: number): Box => ({ minX: b.minX / k, minY: b.minY / k, maxX: b.maxX / k, maxY: b.maxY / k });

/** Measured lines and names at one scale, the chosen one lit up. Names stand where no figure does. */
export function layFigures(drawing: FlueFaceDrawing, mmPerPaperMm: number, chosen: string | null): LaidFigures {
  const terminal = grow(scaled(drawing.terminal, mmPerPaperMm), 0.6);
  const laid = layDistances(drawing.distances, mmPerPaperMm, [terminal]);
  const taken = [terminal, ...laid.flatMap((l) => [grow(l.box, 0.5), ...lineBoxes(l)])];
  const words = placeWords(drawing.words, mmPerPaperMm, taken);
  // The chosen one over the others.
  const order = [...laid].sort((p, q) => Number(isDrawnFor(p, chosen)) - Number(isDrawnFor(q, chosen)));
  return { items: [...words, ...order.flatMap((l) => distanceItems(l, mmPerPaperMm, isDrawnFor(l, chosen)))], laid };
}

/** A straight line across or up is a thin box; a slanting one keeps no names away. */
function lineBoxes({ line, ends, feet }: LaidDistance): Box[] {
  const extensions = ends.map((end, i) => [end, feet[i] ?? end] as const);
  return [line, ...extensions].flatMap(([p, q]) => {
    const box = boxAround([p, q]);
    return box.maxX - box.minX < 1 || box.maxY - box.minY < 1 ? [grow(box, 0.6)] : [];
  });
}
