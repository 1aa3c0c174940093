import type { Box, Item, LineStyle, Spread, Vec } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';
import { COST, type Obstacles } from './obstacles.ts';
import type { Paper } from './paper.ts';
import { type Candidate, close, sides } from './sides.ts';
import type { Placed } from './tags.ts';

export interface FlagText {
  readonly what: string;
  readonly how: string | null;
  readonly whatMm: number;
  readonly howMm: number;
}

const LEADER: LineStyle = { ink: 'leader', pen: PEN.leader, dash: [], fit: false };
/** Between leader and words. */
const GAP_MM = 1;
const LINE_EM = 1.2;

function blockBox(at: Vec, c: Candidate, text: FlagText): Box {
  const w = Math.max(
    textWidth(text.what, text.whatMm, 600),
    text.how === null ? 0 : textWidth(text.how, text.howMm, 400),
  );
  const gap = c.align === 'left' ? GAP_MM : c.align === 'right' ? -GAP_MM : 0;
  const x = at[0] + c.end[0] + gap;
  const left = c.align === 'left' ? x : c.align === 'right' ? x - w : x - w / 2;
  const top = at[1] + c.end[1] + (text.whatMm * LINE_EM) / 2;
  const h = text.whatMm * LINE_EM + (text.how === null ? 0 : text.howMm * LINE_EM);
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
  const second = (text.whatMm + text.howMm) * (LINE_EM / 2);
  return [line(text.what, 0, true), ...(text.how === null ? [] : [line(text.how, second, false)])];
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
): Generator<Candidate> {
  const [p, q] = [paper.at(line[0], thing.spread), paper.at(line[1], thing.spread)];
  for (const t of PLACES) {
    const [dx, dy] = [p[0] + (q[0] - p[0]) * t - at[0], p[1] + (q[1] - p[1]) * t - at[1]];
    const far = Math.hypot(dx, dy) / 4;
    for (const c of close(thing.clearMm, whatMm)) {
      yield { ...c, end: [c.end[0] + dx, c.end[1] + dy], length: c.length + far };
    }
  }
}

/** A flag in the cheapest free place of its eight sides; undefined where every one is taken. */
export function placeFlag(thing: FlagPlace, text: FlagText, paper: Paper, to: Obstacles): Placed | undefined {
  const at = paper.at(thing.at, thing.spread);
  const own = new Set([thing.id]);
  let best: { c: Candidate; box: Box; cost: number } | undefined;
  for (const c of thing.along ? alongLine(thing, thing.along, at, text.whatMm, paper) : sides(thing.clearMm)) {
    const base = (c.length * COST.per10Mm) / 10;
    if (best && base >= best.cost) continue;
    const box = blockBox(at, c, text);
    if (!to.isFree(box)) continue;
    const leader = c.leader.map(([x, y]): Vec => [at[0] + x, at[1] + y]);
    if (leader.some((p, i) => i > 0 && !to.lineIsFree(leader[i - 1] ?? p, p))) continue;
    const crossed = leader.reduce((sum, p, i) => sum + (i === 0 ? 0 : to.lineCost(leader[i - 1] ?? p, p, own)), 0);
    const cost = base + to.cost(box) + crossed * LEADER_PART;
    if (!best || cost < best.cost) best = { c, box, cost };
  }
  if (!best) return undefined;
  to.claim(best.box);
  const items = [...leaderItems(thing.at, best.c, thing.spread), ...textItems(thing.at, best.c, text, thing.spread)];
  return { id: thing.id, items, box: best.box };
}
