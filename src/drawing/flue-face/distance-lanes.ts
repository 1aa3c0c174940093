import { type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Box, Vec } from '../display-list.ts';
import { boxAt, grow, overlap, touches } from '../labels/paper.ts';
import { TEXT_MM } from '../look/tokens.ts';
import { findingMm } from '../paint/finding-prims.ts';
import { textWidth } from '../text/measure.ts';
import { type KeyedDistance, leastMm } from './worst-first.ts';

/** A distance with its ends on the drawing, mm of the plane. */
export interface DrawnDistance extends KeyedDistance {
  readonly a: Vec;
  readonly b: Vec;
  /** Others between the same two places: one line is drawn for all, with what each wants. */
  readonly also: readonly KeyedDistance[];
}

/** One piece of what is written over a measured line, and where it starts along the line. */
interface Words {
  readonly mark: boolean;
  readonly found: string;
  readonly wanted: string;
  readonly markMm: number;
  readonly foundMm: number;
  readonly widthMm: number;
}

/** A measured line where it was laid. Everything in mm of paper, x right and y up. */
export interface LaidDistance extends DrawnDistance {
  /** The two ends that are measured between, and their feet on the line. */
  readonly ends: readonly [Vec, Vec];
  readonly feet: readonly [Vec, Vec];
  /** The line as it is drawn: longer than the feet where the figure stands past them. */
  readonly line: readonly [Vec, Vec];
  /** Way of the line, degrees anticlockwise. */
  readonly turnDeg: number;
  /** Way the figure reads: along its line, or level beside one that is too short and too steep for it. */
  readonly reads: Vec;
  readonly words: Words;
  /** Left end of the figure's line of text, in the middle of its height. */
  readonly textAt: Vec;
  readonly box: Box;
}

export const FIGURE = 'room';
export const WANTED = 'small';
export const WORD_GAP_MM = 1.6;
const OVER_MM = 0.9;
const LANE_MM = 6.6;
const LANES = 10;
const THIN_MM = 0.9;
const OUTSIDE_MM = 1.8;
const SQUARE_MM = 1;

const STATES_WITH_MARK = new Set(['stop', 'check', 'cantTell', 'note']);

const sayWanted = (q: Quantity): string => `${sayFigures(q)}${q.unit === 'mm' ? '' : ` ${q.unit}`}`;

function wordsOf({ distance, also }: DrawnDistance): Words {
  const { found, state } = distance;
  const unit = found.unit === 'mm' ? '' : ` ${found.unit}`;
  const mark = STATES_WITH_MARK.has(state);
  const text = `${sayFigures(found)}${unit}`;
  const wants = [distance, ...also.map((d) => d.distance)].flatMap((d) => (d.wanted ? sayWanted(d.wanted) : []));
  const second = wants.length === 0 ? '' : `wanted ${[...new Set(wants)].join(' and ')}`;
  const markMm = mark ? findingMm('screen') + WORD_GAP_MM : 0;
  const foundMm = textWidth(text, TEXT_MM.screen[FIGURE], 600);
  const wantedMm = second === '' ? 0 : WORD_GAP_MM + textWidth(second, TEXT_MM.screen[WANTED], 400);
  return { mark, found: text, wanted: second, markMm, foundMm, widthMm: markMm + foundMm + wantedMm };
}

/** Along which way a distance is measured: across, up, or straight from end to end, whichever its figure is of. */
function wayOf({ a, b, distance }: DrawnDistance): Vec {
  const [dx, dy] = [b[0] - a[0], b[1] - a[1]];
  if (Math.abs(dy) < SQUARE_MM) return [1, 0];
  if (Math.abs(dx) < SQUARE_MM) return [0, 1];
  const far = Math.hypot(dx, dy);
  const told = leastMm(distance.found) ?? far;
  const off = (mm: number): number => Math.abs(Math.abs(mm) - told);
  if (off(dx) < off(far) && off(dx) <= off(dy)) return [1, 0];
  if (off(dy) < off(far)) return [0, 1];
  // Read from below, or from the right.
  const flip = dx < 0 ? -1 : 1;
  return [(dx * flip) / far, (dy * flip) / far];
}

const along = (p: Vec, way: Vec, by: number): Vec => [p[0] + way[0] * by, p[1] + way[1] * by];
const on = (p: Vec, way: Vec): number => p[0] * way[0] + p[1] * way[1];

type Stand = 'between' | 'pastB' | 'pastA' | 'right' | 'left';
const STANDS: readonly Stand[] = ['between', 'right', 'left', 'pastB', 'pastA'];
/** A line steeper than this (its rise in its length) has room at its side. */
const STEEP = 0.5;

const STAND_COST: Readonly<Record<Stand, number>> = { between: 0, right: 0, left: 0.3, pastB: 0.6, pastA: 1.5 };

interface Taken {
  /** Nothing is written here, though lines may end here. */
  readonly blocked: readonly Box[];
  readonly texts: Box[];
  readonly lines: (readonly [Vec, Vec])[];
}

const lineBox = ([p, q]: readonly [Vec, Vec]): Box =>
  grow(
    { minX: Math.min(p[0], q[0]), minY: Math.min(p[1], q[1]), maxX: Math.max(p[0], q[0]), maxY: Math.max(p[1], q[1]) },
    THIN_MM,
  );

/** Two lines of a drawing lie on each other, rather than cross. */
function lieTogether(m: readonly [Vec, Vec], n: readonly [Vec, Vec]): boolean {
  const way = (l: readonly [Vec, Vec]): Vec => {
    const d = Math.hypot(l[1][0] - l[0][0], l[1][1] - l[0][1]) || 1;
    return [(l[1][0] - l[0][0]) / d, (l[1][1] - l[0][1]) / d];
  };
  const [u, v] = [way(m), way(n)];
  return Math.abs(u[0] * v[1] - u[1] * v[0]) < 0.1 && overlap(lineBox(m), lineBox(n));
}

/** What it costs to lie so: over what is written, on another line, far from what it measures. */
function costOf(laid: LaidDistance, lane: number, stand: Stand, taken: Taken): number {
  let cost = Math.abs(lane) * 0.6 + STAND_COST[stand];
  for (const t of taken.blocked) if (overlap(laid.box, t)) cost += 12;
  for (const t of taken.texts) {
    if (overlap(laid.box, t)) cost += 12;
    if (touches(t, ...laid.line)) cost += 6;
    laid.ends.forEach((end, i) => {
      if (touches(t, end, laid.feet[i] ?? end)) cost += 2;
    });
  }
  for (const l of taken.lines) {
    if (touches(laid.box, ...l)) cost += 4;
    if (lieTogether(laid.line, l)) cost += 8;
  }
  return cost;
}

/** One try: its line so many lanes off, its figure between the ends or past one of them. */
function lay(
  drawn: DrawnDistance,
  k: number,
  way: Vec,
  words: Words,
  offMm: number,
  stand: Stand,
): LaidDistance | undefined {
  const normal: Vec = [-way[1], way[0]];
  const a: Vec = [drawn.a[0] / k, drawn.a[1] / k];
  const b: Vec = [drawn.b[0] / k, drawn.b[1] / k];
  const level = on(a, normal) + offMm;
  const foot = (p: Vec): Vec => along(p, normal, level - on(p, normal));
  const feet = [foot(a), foot(b)] as const;
  const [from, upTo] = [on(feet[0], way), on(feet[1], way)];
  const [lo, hi] = [Math.min(from, upTo), Math.max(from, upTo)];
  const fits = words.widthMm + 2 <= hi - lo;
  if (fits !== (stand === 'between')) return undefined;
  const high = words.mark ? findingMm('screen') : TEXT_MM.screen[FIGURE];
  const place = (s: number, over: number): Vec => [
    way[0] * s + normal[0] * (level + over),
    way[1] * s + normal[1] * (level + over),
  ];
  const line = [place(lo, 0), place(hi, 0)] as const;
  const turnDeg = (Math.atan2(way[1], way[0]) * 180) / Math.PI;
  const told = { ...drawn, ends: [a, b], feet, turnDeg, words } as const;
  if (stand === 'right' || stand === 'left') {
    if (Math.abs(way[1]) < STEEP) return undefined;
    const [x, y] = place((lo + hi) / 2, 0);
    const left = stand === 'right' ? x + OUTSIDE_MM : x - OUTSIDE_MM - words.widthMm;
    const box = boxAt(left + words.widthMm / 2, y, words.widthMm, high);
    return { ...told, line, reads: [1, 0], textAt: [left, y], box };
  }
  const highEnd = stand === 'pastB' ? upTo >= from : from > upTo;
  const past = highEnd ? hi + OUTSIDE_MM : lo - OUTSIDE_MM - words.widthMm;
  const start = fits ? (lo + hi - words.widthMm) / 2 : past;
  const over = high / 2 + OVER_MM;
  const middle = place(start + words.widthMm / 2, over);
  const [c, s] = [Math.abs(way[0]), Math.abs(way[1])];
  const box = boxAt(middle[0], middle[1], c * words.widthMm + s * high, s * words.widthMm + c * high);
  const longer = [place(Math.min(lo, start), 0), place(Math.max(hi, start + words.widthMm), 0)] as const;
  return { ...told, line: fits ? line : longer, reads: way, textAt: place(start, over), box };
}

const LANE_ORDER = Array.from({ length: 2 * LANES + 1 }, (_, i) => (i % 2 === 1 ? (i + 1) / 2 : -i / 2));

/**
 * Lays measured lines so that no figure stands on another: each in turn takes the cheapest lane, the first given nearest
 * to what it measures. `blocked` (mm of paper) is kept free of figures. Same distances at the same scale, same places.
 */
export function layDistances(
  drawn: readonly DrawnDistance[],
  mmPerPaperMm: number,
  blocked: readonly Box[],
): LaidDistance[] {
  const taken: Taken = { blocked, texts: [], lines: [] };
  return drawn.map((d) => {
    const [way, words] = [wayOf(d), wordsOf(d)];
    let best: { readonly laid: LaidDistance; readonly cost: number } | undefined;
    for (const lane of LANE_ORDER) {
      if (best && Math.abs(lane) * 0.6 >= best.cost) break;
      for (const stand of STANDS) {
        const laid = lay(d, mmPerPaperMm, way, words, lane * LANE_MM, stand);
        if (!laid) continue;
        const cost = costOf(laid, lane, stand, taken);
        if (!best || cost < best.cost) best = { laid, cost };
      }
    }
    const laid = best?.laid ?? (lay(d, mmPerPaperMm, way, words, 0, 'between') as LaidDistance);
    taken.texts.push(grow(laid.box, 0.6));
    taken.lines.push(laid.line);
    return laid;
  });
}
