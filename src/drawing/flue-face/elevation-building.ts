import { resolveHeight } from '../../geometry/heights.ts';
import { roofPlaneZ } from '../../geometry/roofs.ts';
import type { Plan } from '../../plan/plan.ts';
import { clipLine } from '../building/clip-line.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { Elevation, ElevationWall } from './elevation.ts';
import type { WordWish } from './word-labels.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.doorLeaf, dash: [], fit: false };
const ASSUMED: LineStyle = { ...EDGE, dash: [2, 1.2] };
/** A storey's floor lies behind the face: long thin dashes with a dot. */
const LEVEL: LineStyle = { ink: 'dimension', pen: PEN.batten, dash: [5, 1, 0.6, 1], fit: false };
const GROUND: LineStyle = { ink: 'wallEdge', pen: PEN.frame, dash: [], fit: false };
const EARTH: LineStyle = { ink: 'hatch', pen: PEN.opening, dash: [], fit: false };

/** Ground that was levelled this far off a face is shown on it. */
const NEAR_MM = 1500;
/** A roof is cut just behind the face: its outline often ends on it. */
const BEHIND_MM = 20;
const PAST_MM = 500;
const EARTH_EVERY_MM = 220;
const EARTH_MM = 110;

export interface Part {
  readonly items: readonly Item[];
  readonly words: readonly WordWish[];
}

export const rectangle = (a: number, b: number, low: number, high: number): Vec[] => [
  [a, low],
  [b, low],
  [b, high],
  [a, high],
];

/** Line of the roof over the face: where its plane is cut by it, from left to right. */
export function roofLines(plan: Plan, elevation: Elevation): readonly (readonly [Vec, Vec])[] {
  const through = elevation.inPlan(0, -BEHIND_MM);
  const found: [Vec, Vec][] = [];
  for (const roof of Object.values(plan.roofs)) {
    const ring = roof.outline.map((p): Vec => [p.x, p.y]);
    for (const cut of clipLine([ring], [through.x, through.y], [elevation.right.x, elevation.right.y])) {
      const ends = cut.map(([x, y]): Vec | undefined => {
        const z = roofPlaneZ(plan, roof, { x, y });
        return z === undefined ? undefined : elevation.at({ x, y, z });
      });
      const [p, q] = ends;
      if (p && q) found.push(p[0] <= q[0] ? [p, q] : [q, p]);
    }
  }
  return found;
}

/** The wall between its top and the slope over it: a gable. */
function gable([p, q]: readonly [Vec, Vec], walls: readonly ElevationWall[]): Item[] {
  const middle = (p[0] + q[0]) / 2;
  const under = walls.filter((w) => w.from <= middle && w.upTo >= middle).map((w) => w.high);
  const top = Math.max(...under);
  if (under.length === 0 || Math.max(p[1], q[1]) <= top + 1) return [];
  const ring: Vec[] = [[p[0], Math.min(top, p[1])], [q[0], Math.min(top, q[1])], q, p];
  return [{ t: 'area', rings: [ring], fill: 'room' }];
}

/** Walls in line, the gable over them and the edge of the roof. `clear`: lines only, so that a picture shows. */
export function wallsAndRoof(
  plan: Plan,
  elevation: Elevation,
): { readonly ground: Item[]; readonly lines: Item[]; readonly words: WordWish[] } {
  const { walls } = elevation;
  const roofs = roofLines(plan, elevation);
  const ground: Item[] = [
    ...walls.map((w): Item => ({ t: 'area', rings: [rectangle(w.from, w.upTo, w.low, w.high)], fill: 'room' })),
    ...roofs.flatMap((r) => gable(r, walls)),
    ...between(walls),
  ];
  const lines: Item[] = [
    ...walls.flatMap((w): Item[] =>
      [w.from, w.upTo].map((x) => ({
        t: 'line',
        pts: [
          [x, w.low],
          [x, w.high],
        ],
        style: w.assumed ? ASSUMED : EDGE,
      })),
    ),
    ...roofs.map(([p, q]): Item => ({ t: 'line', pts: [p, q], style: { ...EDGE, pen: PEN.wallEdge } })),
  ];
  const overTop = walls.filter((w) => !walls.some((o) => o.low >= w.high && o.from < w.upTo && o.upTo > w.from));
  for (const w of overTop) {
    const roofed = roofs.some(([p, q]) => p[0] < w.upTo - 1 && q[0] > w.from + 1 && Math.max(p[1], q[1]) > w.high + 1);
    if (!roofed)
      lines.push({
        t: 'line',
        pts: [
          [w.from, w.high],
          [w.upTo, w.high],
        ],
        style: w.assumed ? ASSUMED : EDGE,
      });
  }
  return { ground, lines, words: roofWords(plan, roofs) };
}

/** The build-up of a floor between two walls over each other belongs to the face too. */
function between(walls: readonly ElevationWall[]): Item[] {
  return walls.flatMap((w) => {
    const over = walls
      .filter((o) => o.low >= w.high && o.from < w.upTo && o.upTo > w.from)
      .sort((p, q) => p.low - q.low)[0];
    if (!over || over.low - w.high < 1) return [];
    const [a, b] = [Math.max(w.from, over.from), Math.min(w.upTo, over.upTo)];
    const edge = (x: number): Item => ({
      t: 'line',
      pts: [
        [x, w.high],
        [x, over.low],
      ],
      style: EDGE,
    });
    return [{ t: 'area', rings: [rectangle(a, b, w.high, over.low)], fill: 'room' }, edge(a), edge(b)];
  });
}

function roofWords(plan: Plan, lines: readonly (readonly [Vec, Vec])[]): WordWish[] {
  const eaves = Object.values(plan.roofs).flatMap((r) => resolveHeight(plan, r.eaves.height)?.z ?? []);
  const first = lines.find(([p, q]) => Math.abs(p[1] - q[1]) < 1);
  if (first) return [{ at: [first[1][0], first[1][1]], text: `eaves ${Math.round(first[1][1])}`, tries: 'aside' }];
  const low = lines.flat().find((p) => eaves.some((z) => Math.abs(z - p[1]) < 30));
  return low ? [{ at: low, text: `eaves ${Math.round(low[1])}`, tries: 'aside' }] : [];
}

/** Floors as thin lines across the face, each with its name and level. */
export function storeyLines(plan: Plan, elevation: Elevation): Part {
  const items: Item[] = [];
  const words: WordWish[] = [];
  for (const storey of Object.values(plan.storeys)) {
    const here = elevation.walls.filter((w) => Math.abs(w.low - storey.floorMm) < 1);
    if (here.length === 0) continue;
    const [a, b] = [Math.min(...here.map((w) => w.from)), Math.max(...here.map((w) => w.upTo))];
    items.push({
      t: 'line',
      pts: [
        [a - PAST_MM, storey.floorMm],
        [b, storey.floorMm],
      ],
      style: LEVEL,
    });
    words.push({
      at: [a - PAST_MM, storey.floorMm],
      text: `${storey.name} ${Math.round(storey.floorMm)}`,
      tries: 'level',
    });
  }
  return { items, words };
}

/** Ground along the foot of the face: heavy, with earth under it, and its level. */
export function groundLines(plan: Plan, elevation: Elevation): Part {
  const items: Item[] = [];
  const words: WordWish[] = [];
  const isNear = (p: { x: number; y: number; z: number }): boolean => {
    const d = elevation.depth(p);
    return d >= -1 && d <= NEAR_MM;
  };
  for (const { line } of Object.values(plan.grounds)) {
    line.forEach((p, i) => {
      const next = line[i + 1];
      if (!next || !isNear(p) || !isNear(next)) return;
      const [a, b] = [elevation.at(p), elevation.at(next)].sort((m, n) => m[0] - n[0]) as [Vec, Vec];
      if (b[0] - a[0] < 1) return;
      items.push({ t: 'line', pts: [a, b], style: GROUND });
      for (let x = a[0] + EARTH_EVERY_MM; x < b[0]; x += EARTH_EVERY_MM) {
        const z = a[1] + ((b[1] - a[1]) * (x - a[0])) / (b[0] - a[0]);
        items.push({
          t: 'line',
          pts: [
            [x, z],
            [x - EARTH_MM, z - EARTH_MM],
          ],
          style: EARTH,
        });
      }
      words.push({ at: b, text: `ground ${Math.round(b[1])}`, tries: 'foot' });
    });
  }
  return { items, words };
}
