import { byWorst, type Finding } from '../../report/finding.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import type { Medium } from '../look/tokens.ts';
import { PEN } from '../look/tokens.ts';
import { findingMm } from '../paint/finding-prims.ts';
import { textWidth } from '../text/measure.ts';
import { nameFindings } from './finding-names.ts';
import { COST, type Obstacles } from './obstacles.ts';
import { boxAt, type Paper } from './paper.ts';
import { type Candidate, sides } from './sides.ts';
import type { Placed } from './tags.ts';

/** Findings nearer than this on paper share one mark: the worst of them, and how many more. */
const TOGETHER_MM = 4;
const SPOT_MM = 3;

const LEADER: LineStyle = { ink: 'leader', pen: PEN.leader, dash: [], fit: false };

interface Gathered {
  readonly worst: Finding;
  readonly at: Vec;
  readonly more: number;
}

/** Findings by place, worst first; what a finding itself stands for (`more` places of one pair) is not counted again. */
function gather(
  findings: readonly Finding[],
  placeOf: (finding: Finding) => Vec | undefined,
  paper: Paper,
): Gathered[] {
  const found: { worst: Finding; at: Vec; more: number }[] = [];
  for (const finding of [...findings].sort(byWorst)) {
    const at = placeOf(finding);
    if (!at) continue;
    const [x, y] = paper.at(at);
    const there = found.find((g) => {
      const [gx, gy] = paper.at(g.at);
      return Math.hypot(gx - x, gy - y) < TOGETHER_MM;
    });
    if (there) there.more++;
    else found.push({ worst: finding, at, more: 0 });
  }
  return found;
}

function itemsOf(g: Gathered, name: string, c: Candidate, across: number, centre: Vec): Item[] {
  const ink = g.worst.outcome === 'stop' ? 'stop' : 'leader';
  const items: Item[] = [
    { t: 'line', pts: c.leader.map(() => g.at), offsetsMm: c.leader, style: { ...LEADER, ink } },
    { t: 'mark', mark: `finding:${g.worst.outcome}`, at: g.at, turnDeg: 0, ink, text: name, offsetMm: centre },
  ];
  if (g.worst.at?.ring) items.unshift({ t: 'mark', mark: 'spot', at: g.at, turnDeg: 0, ink, sizeMm: SPOT_MM });
  else items.unshift({ t: 'mark', mark: 'dot', at: g.at, turnDeg: 0, ink });
  if (g.more > 0) {
    items.push({
      t: 'text',
      at: g.at,
      text: `+${g.more}`,
      size: 'tag',
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

/** Marks of findings that have a place in the view. A mark always shows, even where nothing near it is free. */
export function placeFindings(
  findings: readonly Finding[],
  placeOf: (finding: Finding) => Vec | undefined,
  medium: Medium,
  tagMm: number,
  paper: Paper,
  to: Obstacles,
): MarkedFindings {
  const names = nameFindings(findings);
  const across = findingMm(medium);
  const placed = gather(findings, placeOf, paper).map((g): Placed => {
    const name = names.get(g.worst.key) ?? '?';
    const at = paper.at(g.at);
    const extra = g.more > 0 ? textWidth(`+${g.more}`, tagMm, 600) + 0.8 : 0;
    let best: { c: Candidate; centre: Vec; box: ReturnType<typeof boxAt>; cost: number } | undefined;
    for (const c of sides(g.worst.at?.ring ? SPOT_MM : 0)) {
      const before = c.leader.at(-2) ?? [0, 0];
      const level = Math.abs(c.end[1] - before[1]) < 1e-6;
      const out = across / 2;
      const centre: Vec = level
        ? [c.end[0] + Math.sign(c.end[0]) * out, c.end[1]]
        : [c.end[0], c.end[1] + Math.sign(c.end[1]) * out];
      const box = boxAt(at[0] + centre[0] + extra / 2, at[1] + centre[1], across + extra, across);
      const leader = c.leader.map(([x, y]): Vec => [at[0] + x, at[1] + y]);
      const taken = !to.isFree(box) || leader.some((p, i) => i > 0 && !to.lineIsFree(leader[i - 1] ?? p, p));
      const cost = (taken ? 1000 : 0) + to.cost(box) + (c.length * COST.per10Mm) / 10;
      if (!best || cost < best.cost) best = { c, centre, box, cost };
    }
    if (!best) return { id: g.worst.key, items: [], box: boxAt(at[0], at[1], 0, 0) };
    to.claim(best.box);
    return { id: g.worst.key, items: itemsOf(g, name, best.c, across, best.centre), box: best.box };
  });
  return { placed, names };
}
