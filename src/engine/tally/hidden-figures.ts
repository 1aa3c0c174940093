import { clipToArea } from '../../geometry/outlines.ts';
import { dot, left } from '../../geometry/vec.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Void } from '../../plan/records/building.ts';
import { between, type Quantity } from '../../report/quantity.ts';
import type { TallyFigure } from '../../report/tally.ts';
import { longSide } from '../building/void-section.ts';
import type { Pipe } from '../clearance/pipes.ts';
import type { Given } from '../given.ts';
import { figureOf, metres } from './figure-of.ts';

const GROUP = 'What shows';

type Part = readonly [from: number, to: number];

/** Length of parts of a line, counted once where they lie over each other. */
export function coveredMm(parts: readonly Part[]): number {
  let covered = 0;
  let end = Number.NEGATIVE_INFINITY;
  for (const [from, to] of [...parts].sort((a, b) => a[0] - b[0])) {
    covered += Math.max(0, to - Math.max(from, end));
    end = Math.max(end, to);
  }
  return covered;
}

/** Share of a piece that lies in no void, box or slab and in no wall. */
function shareSeen(pipe: Pipe, hidden: ReadonlyMap<string, readonly Part[]>): number {
  const { a, b } = pipe.body;
  const lengthMm = Math.hypot(b.x - a.x, b.y - a.y, b.z - a.z);
  return lengthMm === 0 ? 0 : Math.max(0, 1 - coveredMm(hidden.get(pipe.edge.id) ?? []) / lengthMm);
}

function hiddenParts(given: Given): ReadonlyMap<string, readonly Part[]> {
  const parts = new Map<string, Part[]>();
  const put = (edge: string, part: Part): void => void parts.set(edge, [...(parts.get(edge) ?? []), part]);
  for (const v of given.voidParts) put(v.pipe.edge.id, [v.fromMm, v.toMm]);
  for (const c of given.crossings) if (c.opening === null) put(c.pipe.edge.id, [c.fromMm, c.toMm]);
  return parts;
}

function visibleRow(given: Given): TallyFigure {
  const hidden = hiddenParts(given);
  const fresh = [...given.network.edges.values()].filter((e) => e.state === 'new' && e.circuit !== 'flue');
  const placed = new Map(given.pipes.map((p) => [p.edge.id, p]));
  let [lo, hi] = [0, 0];
  let unplaced = 0;
  let assumed = false;
  const ids = new Set<string>();
  for (const edge of fresh) {
    const pipe = placed.get(edge.id);
    if (!pipe) {
      // Somewhere between all of it and none.
      unplaced += 1;
      hi += edge.lengthMm.hi ?? edge.lengthMm.lo;
      continue;
    }
    const share = shareSeen(pipe, hidden);
    assumed ||= pipe.heightAssumed;
    if (share > 0) ids.add(edge.run);
    lo += share * edge.lengthMm.lo;
    hi += share * (edge.lengthMm.hi ?? edge.lengthMm.lo);
  }
  const open = fresh.some((e) => e.lengthMm.hi === null);
  const figure: Quantity = between(lo / 1000, open ? null : hi / 1000, 'm', 1);
  const none = !Object.keys(given.plan.voids).some((id) => given.network.alive.has('voids', id));
  return figureOf({
    id: 'visible',
    group: GROUP,
    label: 'New pipe in sight',
    order: 0,
    figure,
    say: none
      ? 'no void or box is drawn'
      : unplaced > 0
        ? 'some of it has no height'
        : assumed
          ? 'heights assumed'
          : '',
    chapter: 'section:runs',
    ids: [...ids].sort(),
  });
}

/** How long a box is the way it goes: up where it is taller than long. Null where its heights are not known. */
function boxMm(given: Given, space: Void): number | null {
  const heights = voidHeights(given.plan, space);
  if (!heights) return null;
  const way = longSide(space);
  const extent = (axis: { x: number; y: number }): number => {
    const at = space.outline.map((p) => dot(p, axis));
    return Math.max(...at) - Math.min(...at);
  };
  return Math.max(extent(way), extent(left(way)), heights.top - heights.bottom);
}

function boxingRow(given: Given): TallyFigure {
  const boxes = Object.values(given.plan.voids).filter(
    (v) => v.kind === 'boxing' && v.option !== null && given.network.alive.has('voids', v.id),
  );
  const long = boxes.map((b) => boxMm(given, b));
  const sum = long.reduce<number>((total, mm) => total + (mm ?? 0), 0);
  const unknown = long.filter((mm) => mm === null).length;
  return figureOf({
    id: 'boxing',
    group: GROUP,
    label: 'New boxing',
    order: 1,
    figure: unknown === 0 ? metres(sum) : between(sum / 1000, null, 'm', 1),
    say: boxes.length === 0 ? 'none drawn' : boxes.length === 1 ? '1 box' : `${boxes.length} boxes`,
    chapter: boxes.length === 0 ? null : 'section:boxing',
    ids: boxes.map((b) => b.id),
  });
}

/** New pipe under floors, as seen from above: what has to be opened for it. */
function floorsRow(given: Given): TallyFigure {
  const flat = new Map<string, Map<string, number>>();
  for (const { pipe, space } of given.voidParts) {
    if (space.kind !== 'floor' || pipe.edge.state !== 'new') continue;
    const { a, b } = pipe.body;
    const long = Math.hypot(b.x - a.x, b.y - a.y);
    const share = clipToArea(a, b, space.outline, space.holes).reduce((sum, [from, to]) => sum + to - from, 0);
    const runs = flat.get(space.id) ?? new Map<string, number>();
    runs.set(pipe.run, (runs.get(pipe.run) ?? 0) + long * share);
    flat.set(space.id, runs);
  }
  const spaces = [...flat.values()].map((runs) => [...runs.values()]);
  const least = spaces.reduce((sum, runs) => sum + Math.max(...runs), 0);
  const most = spaces.flat().reduce((sum, mm) => sum + mm, 0);
  return figureOf({
    id: 'work/floors',
    group: 'Work',
    label: 'Floor to open, along pipes',
    order: 20,
    figure: between(least / 1000, most / 1000, 'm', 1),
    say: flat.size === 0 ? 'none' : most > least ? 'less where pipes lie side by side' : '',
    chapter: flat.size === 0 ? null : 'section:floors',
    ids: [...flat.keys()].sort(),
  });
}

/** What is seen of new pipe, what is boxed, and what floor is opened for it. Nothing before the work. */
export function hiddenFigures(given: Given): TallyFigure[] {
  return given.case.when === 'before' ? [] : [visibleRow(given), boxingRow(given), floorsRow(given)];
}
