import { roofPlaneZ } from '../../geometry/roofs.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Ground, Roof } from '../../plan/records/building.ts';
import type { Item, LineStyle, Vec, Wish } from '../display-list.ts';
import { PEN } from '../look/tokens.ts';
import type { FacePlane } from '../pipes/plane.ts';
import { shortLevel } from '../text/say-level.ts';
import { cutBy, cutLine } from './face-wall.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.wallEdge, dash: [], fit: false };
const EARTH: LineStyle = { ink: 'hatch', pen: PEN.opening, dash: [], fit: false };
/** Ground that was levelled this far off a face is shown on it. */
const NEAR_MM = 1500;
/** Earth is drawn as slants under its line, so far apart and so long. */
const SLANT_EVERY_MM = 120;
const SLANT_MM = 70;

export interface Outside {
  readonly items: readonly Item[];
  readonly wishes: readonly Wish[];
}

const NOTHING: Outside = { items: [], wishes: [] };

/** z at a distance across between two places of a line. */
const between = (p: Vec, q: Vec, u: number): number =>
  q[0] === p[0] ? p[1] : p[1] + ((q[1] - p[1]) * (u - p[0])) / (q[0] - p[0]);

/** A slope where it comes down on a face: what is over it is no room. */
export function faceRoof(plan: Plan, roof: Roof, plane: FacePlane): Outside {
  const line = cutLine(plan, plane);
  if (!line || roof.storey !== plane.storey) return NOTHING;
  const ring = roof.outline.map((p): Vec => [p.x, p.y]);
  const items: Item[] = [];
  for (const cut of cutBy([ring], line, plane)) {
    const [from, upTo] = [Math.max(cut.from, plane.from), Math.min(cut.upTo, plane.upTo)];
    const [u0] = plane.at({ x: line.through[0], y: line.through[1], z: 0 });
    const zAt = (u: number): number | undefined =>
      roofPlaneZ(plan, roof, {
        x: line.through[0] + line.way[0] * (u - u0),
        y: line.through[1] + line.way[1] * (u - u0),
      });
    const [z0, z1] = [zAt(from), zAt(upTo)];
    if (upTo <= from || z0 === undefined || z1 === undefined) continue;
    items.push(...underCeiling([from, z0], [upTo, z1], plane));
  }
  return { items, wishes: [] };
}

/** The part of a slope that is lower than the ceiling, and the wall over it taken away. */
function underCeiling(p: Vec, q: Vec, { ceilingZ, floorZ }: FacePlane): Item[] {
  const low = [p, q].filter((v) => v[1] < ceilingZ);
  if (low.length === 0) return [];
  const crosses = low.length === 1 ? crossAt(p, q, ceilingZ) : undefined;
  const [a, b] = crosses ? (p[1] < ceilingZ ? [p, crosses] : [crosses, q]) : [p, q];
  const at = (v: Vec): Vec => [v[0], Math.max(v[1], floorZ)];
  const over: Vec[] = [at(a), at(b), [b[0], ceilingZ], [a[0], ceilingZ]];
  return [
    { t: 'area', rings: [over], fill: 'void' },
    { t: 'line', pts: [at(a), at(b)], style: EDGE },
  ];
}

function crossAt(p: Vec, q: Vec, z: number): Vec | undefined {
  if (p[1] === q[1]) return undefined;
  return [p[0] + ((q[0] - p[0]) * (z - p[1])) / (q[1] - p[1]), z];
}

/** Ground along an outer face: its line with earth under it, and the level at each place that was measured. */
export function faceGround(plan: Plan, ground: Ground, plane: FacePlane): Outside {
  const items: Item[] = [];
  const wishes: Wish[] = [];
  const near = (out: number): boolean => out >= -1 && out <= NEAR_MM;
  ground.line.forEach((p, i) => {
    const next = ground.line[i + 1];
    const [a, b] = [plane.at(p), next ? plane.at(next) : undefined];
    if (near(plane.toReader(p)) && a[0] >= plane.from - 1 && a[0] <= plane.upTo + 1) {
      items.push({ t: 'mark', mark: 'levelOn', at: a, turnDeg: 0, ink: 'symbol' });
      const what = `ground ${shortLevel(plan, p.z, plane.storey)}`;
      wishes.push({ w: 'flag', at: a, what, how: null, rank: 5, clearMm: 2.4 });
    }
    if (!next || !b || !near(plane.toReader(p)) || !near(plane.toReader(next))) return;
    const [l, r] = a[0] <= b[0] ? [a, b] : [b, a];
    const [from, upTo] = [Math.max(l[0], plane.from), Math.min(r[0], plane.upTo)];
    if (upTo <= from) return;
    items.push({
      t: 'line',
      pts: [
        [from, between(l, r, from)],
        [upTo, between(l, r, upTo)],
      ],
      style: EDGE,
    });
    for (let u = from + SLANT_EVERY_MM / 2; u < upTo; u += SLANT_EVERY_MM) {
      const z = between(l, r, u);
      items.push({
        t: 'line',
        pts: [
          [u, z],
          [u - SLANT_MM, z - SLANT_MM],
        ],
        style: EARTH,
      });
    }
  });
  return { items, wishes };
}
