import { pointBox } from '../../geometry/point-box.ts';
import { wallLength } from '../../geometry/wall-frame.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import type { FlueFace } from '../../report/flue-face.ts';
import { bodyPart } from '../building/wall-bodies.ts';
import type { Box, Item, LineStyle, Vec } from '../display-list.ts';
import { boxAround } from '../fragments/fragment.ts';
import { PEN } from '../look/tokens.ts';
import type { Elevation } from './elevation.ts';
import type { WordWish } from './word-labels.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.doorLeaf, dash: [], fit: false };
const THING: LineStyle = { ink: 'symbol', pen: PEN.opening, dash: [], fit: false };
const TERMINAL: LineStyle = { ink: 'accent', pen: PEN.wallEdge, dash: [], fit: false };
const MARGIN_MM = 350;

/** What lies before the face, from above, straight under the elevation: across is the same, out of the face is down. */
export interface PlanStrip {
  readonly items: readonly Item[];
  readonly words: readonly WordWish[];
  readonly box: Box;
  readonly at: (p: Xyz) => Vec;
}

/**
 * Drawn only where a distance goes out from the wall. `topY`: the strip hangs from there.
 */
export function planStrip(
  plan: Plan,
  elevation: Elevation,
  face: FlueFace,
  alive: Alive,
  topY: number,
): PlanStrip | undefined {
  const inPlan = face.distances.filter((d) => d.shows === 'plan');
  if (inPlan.length === 0) return undefined;
  const ends = inPlan.flatMap((d) => [d.from, d.to]);
  const thickness = face.wall === null ? MARGIN_MM : (plan.walls[face.wall]?.thicknessMm ?? MARGIN_MM);
  const depths = ends.map((p) => elevation.depth(p));
  const back = Math.min(-thickness, ...depths.map((d) => d - (face.wall === null ? MARGIN_MM : 0)));
  const front = Math.max(...depths) + MARGIN_MM;
  const across = ends.map((p) => elevation.at(p)[0]);
  const left = Math.min(elevation.from, ...across.map((u) => u - MARGIN_MM));
  const right = Math.max(elevation.upTo, ...across.map((u) => u + MARGIN_MM));
  const at = (p: Xyz): Vec => [elevation.at(p)[0], topY - (elevation.depth(p) - back)];
  const held = (p: Xy): Vec => {
    const place = { ...p, z: 0 };
    const [u, d] = [elevation.at(place)[0], elevation.depth(place)];
    return [Math.min(right, Math.max(left, u)), topY - (Math.min(front, Math.max(back, d)) - back)];
  };
  const items: Item[] = [];
  const words: WordWish[] = [{ at: [left, topY + 120], text: 'from above', tries: 'level', strong: true }];
  const named = new Set(inPlan.flatMap((d) => d.ids).sort());
  const shown = new Set(elevation.walls.map((w) => w.id));
  for (const id of named) {
    shown.add(id);
    const host = plan.openings[id]?.wall;
    if (host !== undefined) shown.add(host);
  }
  for (const wall of Object.values(plan.walls)) {
    if (wall.storey !== face.storey || !alive.has('walls', wall.id)) continue;
    // Walls behind the face say nothing of what is before it.
    const before = [wall.a, wall.b].some((p) => elevation.depth({ ...p, z: 0 }) > 1);
    if (!before && !shown.has(wall.id)) continue;
    const ring = bodyPart(wall, 0, wallLength(wall)).map(([x, y]) => held({ x, y }));
    if (isFlat(ring)) continue;
    items.push({ t: 'area', rings: [ring], fill: 'wall', edge: EDGE });
  }
  for (const id of named) {
    const point = plan.points[id];
    const body = point && id !== face.terminal ? pointBox(plan, point) : undefined;
    if (!point || !body) continue;
    const ring = body.footprint.map(held);
    if (isFlat(ring)) continue;
    items.push({ t: 'area', rings: [ring], fill: 'paper', edge: THING });
    const box = boxAround(ring);
    words.push({
      at: [(box.minX + box.maxX) / 2, box.minY],
      top: box.maxY,
      text: point.name,
      tries: 'under',
      ids: [id],
    });
  }
  const terminal = plan.points[face.terminal];
  const body = terminal && pointBox(plan, terminal);
  if (body) items.push({ t: 'area', rings: [body.footprint.map(held)], fill: 'paper', edge: TERMINAL });
  const box = { minX: left, maxX: right, minY: topY - (front - back), maxY: topY + MARGIN_MM };
  return { items, words, box, at };
}

/** Nothing of it lies in the strip. */
function isFlat(ring: readonly Vec[]): boolean {
  const { minX, minY, maxX, maxY } = boxAround(ring);
  return maxX - minX < 1 || maxY - minY < 1;
}
