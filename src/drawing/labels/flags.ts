import type { Box, Item, LineStyle, Spread, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';
import type { FlagLines } from './flag-wishes.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { clipTo, type Paper } from './paper.ts';
import { type Candidate, close, sides } from './sides.ts';
import type { Placed } from './tags.ts';

export interface FlagText {
  readonly lines: FlagLines;
  readonly whatMm: number;
  readonly howMm: number;
}

const LEADER: LineStyle = { ink: 'leader', pen: PEN.leader, dash: [], fit: false };
/** Between leader and words. */
const GAP_MM = 1;
const LINE_EM = 1.2;

function blockBox(at: Vec, c: Candidate, { lines, whatMm, howMm }: FlagText): Box {
  const [what, ...how] = lines;
  const w = Math.max(textWidth(what, whatMm, 600), ...how.map((line) => textWidth(line, howMm, 400)));
  const gap = c.align === 'left' ? GAP_MM : c.align === 'right' ? -GAP_MM : 0;
  const x = at[0] + c.end[0] + gap;
  const left = c.align === 'left' ? x : c.align === 'right' ? x - w : x - w / 2;
  const top = at[1] + c.end[1] + (whatMm * LINE_EM) / 2;
  const h = whatMm * LINE_EM + how.length * howMm * LINE_EM;
  return { minX: left, minY: top - h, maxX: left + w, maxY: top };
}

function leaderItems(at: Vec, c: Candidate, spread: Spread | undefined): Item[] {
  const [first] = c.leader;
  if (!first) return [];
  return [
    {
      t: 'line',
      pts: c.leader.map(() => at),
      offsetsMm: c.leader,
      style: LEADER,
      ...(spread ? { spread: c.leader.map(() => spread) } : {}),
    },
    { t: 'mark', mark: 'dot', at, turnDeg: 0, ink: 'leader', offsetMm: first, ...(spread ? { spread } : {}) },
  ];
}

function textItems(at: Vec, c: Candidate, text: FlagText, spread: Spread | undefined): Item[] {
  const gap = c.align === 'left' ? GAP_MM : c.align === 'right' ? -GAP_MM : 0;
  const moved = spread ? { spread } : {};
  const line = (words: string, down: number, first: boolean): Item => ({
    t: 'text',
    at,
    text: words,
    size: first ? 'flag' : 'flagSecond',
    weight: first ? 600 : 400,
    align: c.align,
    ink: first ? 'ink1' : 'ink2',
    turnDeg: 0,
    halo: true,
    offsetMm: [c.end[0] + gap, c.end[1] - down],
    ...moved,
  });
  const [what, ...how] = text.lines;
  const second = (text.whatMm + text.howMm) * (LINE_EM / 2);
  return [line(what, 0, true), ...how.map((words, i) => line(words, second + i * text.howMm * LINE_EM, false))];
}

export interface FlagPlace {
  readonly id: string;
  /** In mm of the plane. */
  readonly at: Vec;
  readonly spread?: Spread | undefined;
  readonly clearMm: number;
  /** In mm of the plane: said of this line, so anywhere along it will do. */
  readonly along?: readonly [Vec, Vec] | undefined;
}

/** Covering more than this, words hide more than they say. */
const MOST = 40;
/** Does a line stand rather than lie? Undefined where there is none, or only a place. */
function isUpright(along: FlagPlace['along']): boolean | undefined {
  if (!along || along[0] === along[1]) return undefined;
  return Math.abs(along[0][1] - along[1][1]) > Math.abs(along[0][0] - along[1][0]);
}

/** Crossing a pipe or a mark with its leader costs a flag this part of covering it. */
const LEADER_PART = 0.25;
const PLACES = [0.5, 0.4, 0.6, 0.3, 0.7, 0.2, 0.8];

/** Close by a line at several places along it, relative to `at`. */
function* alongLine(
  thing: FlagPlace,
  line: readonly [Vec, Vec],
  at: Vec,
  whatMm: number,
  paper: Paper,
  within: Box | undefined,
): Generator<Candidate> {
  const whole: [Vec, Vec] = [paper.at(line[0], thing.spread), paper.at(line[1], thing.spread)];
  const shown = within && whole[0] !== whole[1] ? clipTo(within, ...whole) : whole;
  if (!shown) return;
  const [p, q] = shown;
  for (const t of PLACES) {
    const [dx, dy] = [p[0] + (q[0] - p[0]) * t - at[0], p[1] + (q[1] - p[1]) * t - at[1]];
    const far = Math.hypot(dx, dy) / 4;
    for (const c of close(thing.clearMm, whatMm)) {
      yield { ...c, end: [c.end[0] + dx, c.end[1] + dy], length: c.length + far };
    }
  }
}

/** Free paper beside a block of words, so that two blocks are not read as one; at the edge of the view none is needed. */
const BESIDE_MM = 1.4;
function padded(b: Box, { within }: Obstacles): Box {
  const [lo, hi] = [b.minX - BESIDE_MM, b.maxX + BESIDE_MM];
  return { ...b, minX: within ? Math.max(lo, within.minX) : lo, maxX: within ? Math.min(hi, within.maxX) : hi };
}

/** A flag in the cheapest free place of its eight sides, no further off than `far` mm of paper; undefined where every one is taken, or its thing is not in view. */
export function placeFlag(
  thing: FlagPlace,
  text: FlagText,
  paper: Paper,
  to: Obstacles,
  most = MOST,
  far = Number.POSITIVE_INFINITY,
): Placed | undefined {
  const at = paper.at(thing.at, thing.spread);
  if (!thing.along && !to.sees(at)) return undefined;
  const own = new Set([thing.id]);
  let best: { c: Candidate; box: Box; cost: number } | undefined;
  const upright = isUpright(thing.along);
  for (const c of thing.along
    ? alongLine(thing, thing.along, at, text.whatMm, paper, to.within)
    : sides(thing.clearMm)) {
    const base = (c.length * COST.per10Mm) / 10;
    if (c.length > far || base >= (best?.cost ?? most)) continue;
    // Words of a line stand over or under it, or beside one that stands upright: past its end they are astray.
    if (upright !== undefined && (c.align === 'middle') === upright) continue;
    const box = blockBox(at, c, text);
    if (!to.isFree(box) || !to.isFree(padded(box, to))) continue;
    const leader = c.leader.map(([x, y]): Vec => [at[0] + x, at[1] + y]);
    if (leader.some((p, i) => i > 0 && !to.lineIsFree(leader[i - 1] ?? p, p))) continue;
    const crossed = leader.reduce((sum, p, i) => sum + (i === 0 ? 0 : to.lineCost(leader[i - 1] ?? p, p, own)), 0);
    const cost = base + to.cost(box) + crossed * LEADER_PART;
    if (cost < (best?.cost ?? most)) best = { c, box, cost };
  }
  if (!best) return undefined;
  to.claim(best.box);
  const leader = best.c.leader.map(([x, y]): Vec => [at[0] + x, at[1] + y]);
  leader.forEach((p, i) => {
    if (i > 0) to.addLine(leader[i - 1] ?? p, p, 'leader', thing.id);
  });
  const items = [...leaderItems(thing.at, best.c, thing.spread), ...textItems(thing.at, best.c, text, thing.spread)];
  return { id: thing.id, items, box: best.box };
}
