import { direction } from '../../geometry/vec.ts';
import type { Box, Item, LineStyle, Vec } from '../display-list.ts';
import { COST, type Obstacles } from '../labels/obstacles.ts';
import { boxAt, clipTo, type Paper } from '../labels/paper.ts';
import { sides } from '../labels/sides.ts';
import { PEN } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';
import { allFree, asRead, boxesOf, costOf } from './turned-words.ts';

/** A length from centre to centre, told along what it measures. */
export interface IsoLength {
  readonly id: string;
  /** Legs that it measures: it may lie on these. */
  readonly of: ReadonlySet<string>;
  readonly a: Vec;
  readonly b: Vec;
  readonly text: string;
  readonly unsure: boolean;
}

export interface PlacedLength {
  readonly id: string;
  readonly items: readonly Item[];
  readonly boxes: readonly Box[];
}

const LEADER: LineStyle = { ink: 'leader', pen: PEN.leader, dash: [], fit: false };
/** From the pipe to its figure, and each try further off. */
const OFF_MM = 1;
const FURTHER = [0, 2.4, 5];
const PER_MM = 0.5;
const OTHER_SIDE = 0.3;
const SLIDES = [0.5, 0.38, 0.62, 0.26, 0.74, 0.15, 0.85];
/** A figure may reach past its leg by this part of itself before it is told with a leader. */
const PAST = 0.35;
/** Covering more than this, a figure says less than it hides. */
const MOST = 7.5;
const MOST_LED = 14;
/** Longest way of a leader. */
const LED_MM = 24;
const GAP_MM = 0.8;

const text = (length: IsoLength, at: Vec, turnDeg: number, align: 'left' | 'middle' | 'right', off: Vec): Item => ({
  t: 'text',
  at,
  text: length.text,
  size: 'dimension',
  weight: 400,
  align,
  ink: 'ink2',
  turnDeg,
  halo: true,
  offsetMm: off,
  ...(length.unsure ? { underline: 'dotted' as const } : {}),
});

/** Beside its leg, along it. */
function along(length: IsoLength, sizeMm: number, paper: Paper, to: Obstacles): PlacedLength | undefined {
  const [a, b] = [paper.at(length.a), paper.at(length.b)];
  const whole = Math.hypot(b[0] - a[0], b[1] - a[1]);
  const shown: readonly [Vec, Vec] | undefined = to.within ? clipTo(to.within, a, b) : [a, b];
  const width = textWidth(length.text, sizeMm, 400);
  if (!shown || whole < width * (1 - PAST)) return undefined;
  const [p, q] = shown;
  const turnDeg = asRead((Math.atan2(b[1] - a[1], b[0] - a[0]) * 180) / Math.PI);
  const { x: c, y: s } = direction(turnDeg);
  const room = Math.hypot(q[0] - p[0], q[1] - p[1]);
  // Too short to slide on: the middle only.
  const slides = room > width * 1.3 ? SLIDES : [0.5];
  let best: { at: Vec; off: Vec; boxes: Box[]; cost: number } | undefined;
  for (const more of FURTHER) {
    for (const [n, side] of [1, -1].entries()) {
      const away = side * (OFF_MM + more + sizeMm * 0.43);
      const off: Vec = [-s * away, c * away];
      for (const t of slides) {
        const cost = more * PER_MM + n * OTHER_SIDE + Math.abs(t - 0.5);
        if (cost >= (best?.cost ?? MOST)) continue;
        const at: Vec = [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
        const boxes = boxesOf([at[0] + off[0], at[1] + off[1]], turnDeg, width, sizeMm);
        if (!allFree(boxes, to)) continue;
        const all = cost + costOf(boxes, to, length.of);
        if (all < (best?.cost ?? MOST)) best = { at, off, boxes, cost: all };
      }
    }
  }
  if (!best) return undefined;
  const k = paper.mmPerPaperMm;
  const item = text(length, [best.at[0] * k, best.at[1] * k], turnDeg, 'middle', best.off);
  return { id: length.id, items: [item], boxes: best.boxes };
}

/** Lying across at the end of a leader from the middle of its leg: for what is shorter than its figure. */
function led(length: IsoLength, sizeMm: number, paper: Paper, to: Obstacles): PlacedLength | undefined {
  const [a, b] = [paper.at(length.a), paper.at(length.b)];
  const m: Vec = [(a[0] + b[0]) / 2, (a[1] + b[1]) / 2];
  if (!to.sees(m)) return undefined;
  const width = textWidth(length.text, sizeMm, 400);
  let best:
    | { c: ReturnType<typeof sides> extends Generator<infer C> ? C : never; boxes: Box[]; cost: number }
    | undefined;
  for (const c of sides(0.5)) {
    const base = (c.length * COST.per10Mm) / 10;
    if (c.length > LED_MM || base >= (best?.cost ?? MOST_LED)) continue;
    const sign = c.align === 'left' ? 1 : -1;
    const box = boxAt(m[0] + c.end[0] + sign * (GAP_MM + width / 2), m[1] + c.end[1], width, sizeMm);
    if (!to.isFree(box)) continue;
    const leader = c.leader.map(([x, y]): Vec => [m[0] + x, m[1] + y]);
    if (leader.some((p, i) => i > 0 && !to.lineIsFree(leader[i - 1] ?? p, p))) continue;
    const crossed = leader.reduce((sum, p, i) => sum + (i ? to.lineCost(leader[i - 1] ?? p, p, length.of) : 0), 0);
    const cost = base + to.cost(box) + crossed / 4;
    if (cost < (best?.cost ?? MOST_LED)) best = { c, boxes: [box], cost };
  }
  if (!best) return undefined;
  const { c } = best;
  const k = paper.mmPerPaperMm;
  const at: Vec = [m[0] * k, m[1] * k];
  c.leader.forEach(([x, y], i) => {
    const before = c.leader[i - 1];
    if (before) to.addLine([m[0] + before[0], m[1] + before[1]], [m[0] + x, m[1] + y], 'leader', length.id);
  });
  const gap = c.align === 'left' ? GAP_MM : -GAP_MM;
  return {
    id: length.id,
    items: [
      { t: 'line', pts: c.leader.map(() => at), offsetsMm: c.leader, style: LEADER },
      text(length, at, 0, c.align, [c.end[0] + gap, c.end[1]]),
    ],
    boxes: best.boxes,
  };
}

/** The figure in its cheapest free place: along its leg, else, where `leaders` are given room, off it. Claims its room. */
export function placeLength(
  length: IsoLength,
  sizeMm: number,
  paper: Paper,
  to: Obstacles,
  leaders: boolean,
): PlacedLength | undefined {
  const placed = along(length, sizeMm, paper, to) ?? (leaders ? led(length, sizeMm, paper, to) : undefined);
  for (const box of placed?.boxes ?? []) to.claim(box);
  return placed;
}
