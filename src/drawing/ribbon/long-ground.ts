import { voidFinder, voidHeights } from '../../geometry/void-stretches.ts';
import { wallFinder } from '../../geometry/wall-crossings.ts';
import type { Network } from '../../network/network.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Item, LineStyle } from '../display-list.ts';
import { joistZ } from '../face/face-void.ts';
import { rectangle } from '../face/face-wall.ts';
import { joistBox } from '../face/joist-section.ts';
import { PEN } from '../look/tokens.ts';
import type { UnrolledPiece } from './ribbon-run.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.doorLeaf, dash: [], fit: false };

/** What a run passes on its way, and how far along: told in words beside the drawing. */
export interface Passed {
  readonly alongMm: number;
  readonly words: string;
}

export interface LongGround {
  readonly items: readonly Item[];
  readonly passed: readonly Passed[];
}

interface GroundOptions {
  readonly storey: string;
  /** x of so many mm along the run. */
  readonly x: (alongMm: number) => number;
  /** What is thinner than this in mm of the plane is drawn so thick. */
  readonly leastMm: number;
  readonly low: number;
  readonly high: number;
}

const through = { through: 'through a joist', over: 'over a joist', under: 'under a joist' } as const;

/** The ground of the long section: walls, voids and joists where the run goes through them. */
export function longGround(
  plan: Plan,
  network: Network,
  pieces: readonly UnrolledPiece[],
  options: GroundOptions,
): LongGround {
  const { x, leastMm } = options;
  const standing = { has: (id: string) => network.alive.has('voids', id) };
  const voids = voidFinder(plan, standing);
  const walls = wallFinder(plan, { has: (id: string) => network.alive.has('walls', id) });
  const washes: Item[] = [];
  const bodies: Item[] = [];
  const joists: Item[] = [];
  const passed: Passed[] = [];
  for (const piece of pieces) {
    if (piece.kind !== 'leg') continue;
    const [a, b] = piece.places;
    const length = Math.hypot(a.x - b.x, a.y - b.y, a.z - b.z);
    const flat = piece.upTo[0] - piece.from[0];
    if (length === 0) continue;
    const at = (mm: number): number => piece.from[0] + (mm / length) * flat;
    const across = (from: number, to: number) => {
      const [p, q] = [x(at(from)), x(at(to))];
      const thin = Math.max(0, leastMm - (q - p)) / 2;
      return { from: p - thin, upTo: q + thin };
    };
    for (const w of walls.crossings(a, b, options.storey)) {
      if (w.opening !== null) continue;
      const cut = across(w.fromMm, w.toMm);
      bodies.push({ t: 'area', rings: [rectangle(cut, options.low, options.high)], fill: 'wall', edge: EDGE });
      const name = plan.walls[w.wall]?.construction || 'wall';
      passed.push({ alongMm: at(w.fromMm), words: `through ${Math.round(w.throughMm)} of ${name}` });
    }
    for (const v of voids.stretches({ a, b })) {
      const record = plan.voids[v.void];
      const heights = record && voidHeights(plan, record);
      if (!record || !heights) continue;
      const cut = { from: x(at(v.fromMm)), upTo: x(at(v.toMm)) };
      if (cut.upTo > cut.from) {
        washes.push({ t: 'area', rings: [rectangle(cut, heights.bottom, heights.top)], fill: 'void', edge: EDGE });
        passed.push({ alongMm: at(v.fromMm), words: `in ${record.name === '' ? 'the void' : record.name}` });
      }
      const z = joistZ(plan, record);
      for (const j of v.joists) {
        if (z) joists.push(...joistBox(across(j.fromMm, j.toMm), z.low, z.high));
        passed.push({ alongMm: at(j.fromMm), words: j.passes === null ? 'past a joist' : through[j.passes] });
      }
    }
  }
  return { items: [...washes, ...bodies, ...joists], passed };
}
