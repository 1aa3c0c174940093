import { byWorst, type Finding } from '../../report/finding.ts';
import type { Box, Item, LineStyle, Vec } from '../display-list.ts';
import type { Medium } from '../look/tokens.ts';
import { PEN } from '../look/tokens.ts';
import { findingMm } from '../paint/finding-prims.ts';
import { textWidth } from '../text/measure.ts';
import { nameFindings } from './finding-names.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { boxAt, type Paper } from './paper.ts';
import { type Candidate, sides } from './sides.ts';
import type { Placed } from './tags.ts';

/** Free paper about a mark, and how far off the last places tried are. */
const ROOM_MM = 0.8;
const FAR_MM = 100;
/** Radius of the ring about the spot of a clash. */
export const SPOT_MM = 3;

const LEADER: LineStyle = { ink: 'leader', pen: PEN.leader, dash: [], fit: false };

interface Gathered {
  readonly worst: Finding;
  readonly at: Vec;
  readonly more: number;
}

const apart = (p: Gathered, q: Gathered): number => Math.hypot(p.at[0] - q.at[0], p.at[1] - q.at[1]);

/** Findings by place, worst first; what a finding itself stands for (`more` places of one pair) is not counted again. */
function gather(
  findings: readonly Finding[],
  placeOf: (finding: Finding) => Vec | undefined,
  togetherMm: number,
  paper: Paper,
): Gathered[] {
  const found: { worst: Finding; at: Vec; more: number }[] = [];
  for (const finding of [...findings].sort(byWorst)) {
    const at = placeOf(finding);
    if (!at) continue;
    const [x, y] = paper.at(at);
    const there = found.find((g) => {
      const [gx, gy] = paper.at(g.at);
      return Math.hypot(gx - x, gy - y) < togetherMm;
    });
    if (there) there.more++;
    else found.push({ worst: finding, at, more: 0 });
  }
  return found;
}

function itemsOf(g: Gathered, name: string, c: Candidate, across: number, centre: Vec): Item[] {
  const ink = g.worst.outcome === 'stop' ? 'stop' : 'leader';
  const items: Item[] = [
    ...(c.leader.length > 1
      ? [{ t: 'line', pts: c.leader.map(() => g.at), offsetsMm: c.leader, style: { ...LEADER, ink } } as const]
      : []),
    { t: 'mark', mark: `finding:${g.worst.outcome}`, at: g.at, turnDeg: 0, ink, text: name, offsetMm: centre },
  ];
  if (g.worst.at?.ring) items.unshift({ t: 'mark', mark: 'spot', at: g.at, turnDeg: 0, ink, sizeMm: SPOT_MM });
  else items.unshift({ t: 'mark', mark: 'dot', at: g.at, turnDeg: 0, ink });
  if (g.more > 0) {
    items.push({
      t: 'text',
      at: g.at,
      text: `+${g.more}`,
      size: 'small',
      weight: 600,
      align: 'left',
      ink: 'ink1',
      turnDeg: 0,
      halo: true,
      offsetMm: [centre[0] + across / 2 + 0.6, centre[1]],
    });
  }
  return items;
}

export interface MarkedFindings {
  readonly placed: readonly Placed[];
  /** Keys of those marked, by what their mark says. */
  readonly names: ReadonlyMap<string, string>;
}

const NONE: ReadonlySet<string> = new Set();
/** Crossing a thing with its leader costs a mark this part of covering it. */
const LEADER_PART = 0.2;

interface Stood {
  readonly c: Candidate;
  readonly centre: Vec;
  readonly box: Box;
}

/** Straight away from the thing in every direction, further than any side reaches: for where all is crowded. */
function* far(): Generator<Candidate> {
  for (let reach = 10; reach <= FAR_MM; reach += 5) {
    for (let i = 0; i < 16; i++) {
      const a = (i * Math.PI) / 8;
      const end: Vec = [Math.cos(a) * reach, Math.sin(a) * reach];
      yield { end, align: 'middle', leader: [[0, 0], end], length: reach * 1.5 };
    }
  }
}

/** Middle of a mark at the end of its leader: beyond it, the way the leader arrives. */
function centreOf(c: Candidate, across: number): Vec {
  const before = c.leader.at(-2) ?? [0, 0];
  const [dx, dy] = [c.end[0] - before[0], c.end[1] - before[1]];
  const l = Math.hypot(dx, dy) || 1;
  return [c.end[0] + (dx / l) * (across / 2), c.end[1] + (dy / l) * (across / 2)];
}

/** The cheapest place whose mark lies on no other label, nor its leader if that can be; undefined where there is none. */
function stand(g: Gathered, across: number, extra: number, paper: Paper, to: Obstacles): Stood | undefined {
  const at = paper.at(g.at);
  let best: (Stood & { cost: number }) | undefined;
  for (const [tried, mayCross] of [
    [sides(g.worst.at?.ring ? SPOT_MM : 0), false],
    [far(), false],
    [far(), true],
  ] as const) {
    for (const c of tried) {
      const base = (c.length * COST.per10Mm) / 10;
      if (best && base >= best.cost) continue;
      const centre = centreOf(c, across);
      const box = boxAt(at[0] + centre[0] + extra / 2, at[1] + centre[1], across + extra + ROOM_MM, across + ROOM_MM);
      if (!to.isFree(box)) continue;
      const leader = c.leader.map(([x, y]): Vec => [at[0] + x, at[1] + y]);
      if (!mayCross && leader.some((p, i) => i > 0 && !to.lineIsFree(leader[i - 1] ?? p, p))) continue;
      const crossed = leader.reduce((sum, p, i) => sum + (i === 0 ? 0 : to.lineCost(leader[i - 1] ?? p, p, NONE)), 0);
      const cost = base + to.cost(box) + crossed * LEADER_PART;
      if (!best || cost < best.cost) best = { c, centre, box, cost };
    }
    if (best) return best;
  }
  return undefined;
}

/**
 * Marks of findings whose place is in view. Each stands free of every label and of the other marks; one that finds no
 * free place is counted by the mark nearest to it, and only where there is none at all does it stand over its place.
 */
export function placeFindings(
  findings: readonly Finding[],
  placeOf: (finding: Finding) => Vec | undefined,
  medium: Medium,
  textMm: number,
  togetherMm: number,
  paper: Paper,
  to: Obstacles,
): MarkedFindings {
  const names = nameFindings(findings);
  const across = findingMm(medium);
  const inView = (finding: Finding): Vec | undefined => {
    const at = placeOf(finding);
    return at && to.sees(paper.at(at)) ? at : undefined;
  };
  const stood: { g: Gathered; where: Stood }[] = [];
  const put = (g: Gathered): boolean => {
    const extra = g.more > 0 ? textWidth(`+${g.more}`, textMm, 600) + 0.8 : 0;
    const where = stand(g, across, extra, paper, to);
    if (!where) return false;
    to.claim(where.box);
    const at = paper.at(g.at);
    where.c.leader.forEach(([x, y], i) => {
      const [px, py] = where.c.leader[i - 1] ?? [x, y];
      if (i > 0) to.addLine([at[0] + px, at[1] + py], [at[0] + x, at[1] + y], 'leader', g.worst.key);
    });
    stood.push({ g, where });
    return true;
  };
  for (const g of gather(findings, inView, togetherMm, paper)) {
    if (put(g)) continue;
    const nearest = [...stood].sort((p, q) => apart(p.g, g) - apart(q.g, g))[0];
    if (nearest) {
      stood.splice(stood.indexOf(nearest), 1);
      to.release(nearest.where.box);
      const both = { ...nearest.g, more: nearest.g.more + g.more + 1 };
      // With its count it may need more room than it had; where that is not free, the count is not what gives way.
      if (!put(both)) {
        to.claim(nearest.where.box);
        stood.push({ g: both, where: nearest.where });
      }
      continue;
    }
    const [x, y] = paper.at(g.at);
    const c: Candidate = { end: [0, 0], align: 'middle', leader: [], length: 0 };
    const where = { c, centre: [0, 0] as Vec, box: boxAt(x, y, across, across) };
    to.claim(where.box);
    stood.push({ g, where });
  }
  const placed = stood.map(({ g, where }): Placed => {
    const name = names.get(g.worst.key) ?? '?';
    return { id: g.worst.key, items: itemsOf(g, name, where.c, across, where.centre), box: where.box };
  });
  return { placed, names };
}
