import type { Box, Item, LineStyle, Vec } from '../display-list.ts';
import { COST, type Obstacles } from '../labels/obstacles.ts';
import type { Paper } from '../labels/paper.ts';
import { PEN } from '../look/tokens.ts';
import { textWidth } from '../text/measure.ts';
import type { IsoLevel } from './iso-levels.ts';

export interface PlacedLevel {
  readonly id: string;
  readonly items: readonly Item[];
  readonly box: Box;
}

const LINE: LineStyle = { ink: 'leader', pen: PEN.leader, dash: [], fit: false };
const CLEAR_MM = 1;
/** Before the mark, for its width, and between it and the figure. */
const FOOT_MM = 1.7;
const MARK_MM = 3.4;
const REACHES_MM = [1, 4, 8, 13];
const KICKS_MM = [0, 4, -4, 8, -8, 13, -13];
/** From the line to the middle of the figure over it. */
const OVER_EM = 0.62;
const MOST = 12;
/** A later place of the same level is no worse by much. */
const PER_PLACE = 0.2;
const MOST_PLACES = 6;

interface Tried {
  readonly at: Vec;
  readonly line: readonly Vec[];
  readonly mark: Vec;
  readonly figure: Vec;
  readonly box: Box;
  readonly cost: number;
}

/** A level line from a place, to the right or left, flat or with one kick of 45 degrees; its mark and figure stand on it. */
function tried(p: Vec, side: number, kick: number, reach: number, width: number, sizeMm: number): Omit<Tried, 'cost'> {
  const up = Math.abs(kick);
  const foot = CLEAR_MM + reach + up;
  const end = foot + FOOT_MM + MARK_MM + width;
  const line: Vec[] = [[side * CLEAR_MM, 0]];
  if (kick !== 0) line.push([side * (CLEAR_MM + reach), 0], [side * foot, kick]);
  line.push([side * end, kick]);
  const [from, upTo] = side > 0 ? [foot, end] : [-end, -foot];
  const markAt = from + FOOT_MM;
  return {
    at: p,
    line,
    mark: [markAt, kick],
    figure: [markAt + MARK_MM / 2 + width / 2 + 0.2, kick + sizeMm * OVER_EM],
    box: { minX: p[0] + from, maxX: p[0] + upTo, minY: p[1] + kick - 0.3, maxY: p[1] + kick + sizeMm * 1.1 },
  };
}

/** A level mark with its height, in the cheapest free place; undefined where there is none. Claims its room. */
export function placeLevel(level: IsoLevel, sizeMm: number, paper: Paper, to: Obstacles): PlacedLevel | undefined {
  const width = textWidth(level.text, sizeMm, 600);
  const own: ReadonlySet<string> = new Set();
  let best: (Tried & { place: Vec }) | undefined;
  for (const [n, place] of level.places.slice(0, MOST_PLACES).entries()) {
    const p = paper.at(place);
    if (!to.sees(p)) continue;
    for (const reach of REACHES_MM) {
      for (const kick of KICKS_MM) {
        for (const side of [1, -1]) {
          const base = ((reach + Math.abs(kick) * 1.4) * COST.per10Mm) / 10 + n * PER_PLACE + (side > 0 ? 0 : 0.1);
          if (base >= (best?.cost ?? MOST)) continue;
          const one = tried(p, side, kick, reach, width, sizeMm);
          if (!to.isFree(one.box)) continue;
          const line = one.line.map(([x, y]): Vec => [p[0] + x, p[1] + y]);
          if (line.some((q, i) => i > 0 && !to.lineIsFree(line[i - 1] ?? q, q))) continue;
          const crossed = line.reduce((sum, q, i) => sum + (i ? to.lineCost(line[i - 1] ?? q, q, own) : 0), 0);
          const cost = base + to.cost(one.box) + crossed / 4;
          if (cost < (best?.cost ?? MOST)) best = { ...one, cost, place };
        }
      }
    }
  }
  if (!best) return undefined;
  to.claim(best.box);
  const { place, line, mark, figure, at: p } = best;
  line.forEach(([x, y], i) => {
    const before = line[i - 1];
    if (before) to.addLine([p[0] + before[0], p[1] + before[1]], [p[0] + x, p[1] + y], 'leader', level.id);
  });
  return {
    id: level.id,
    box: best.box,
    items: [
      { t: 'line', pts: line.map(() => place), offsetsMm: line, style: LINE },
      { t: 'mark', mark: 'levelOn', at: place, turnDeg: 0, ink: 'ink2', offsetMm: mark },
      {
        t: 'text',
        at: place,
        text: level.text,
        size: 'dimension',
        weight: 600,
        align: 'middle',
        ink: 'ink1',
        turnDeg: 0,
        halo: true,
        offsetMm: figure,
        ...(level.unsure ? { underline: 'dotted' as const } : {}),
      },
    ],
  };
}
