import { distance, sub } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { storeyOf } from '../panes.ts';
import { errorOf } from './wall-ask.ts';
import { asLaid, lastTakesError, layChain, spreadError, type WallChain } from './wall-chain.ts';
import type { WallCtx } from './wall-steps.ts';

export type WallEnd = 'open' | 'closed';

/** Draws the last wall of a chain and lays the others by it, in one step. Nothing changes where it is refused. */
export function layWalls(
  ctx: WallCtx,
  chain: WallChain,
  corners: readonly Xy[],
  why: 'draw' | 'close' | 'spread',
): WallEnd {
  const { memory, inHand, plan } = ctx;
  const walls = chain.walls.flatMap(({ thicknessMm }, i) => {
    const [a, b] = [corners[i], corners[i + 1]];
    const wall = memory.ids[i];
    const was = wall === undefined ? undefined : plan.walls[wall];
    if (!a || !b || (was && same(was.a, a) && same(was.b, b))) return [];
    return [{ ...(wall === undefined ? {} : { wall }), a, b, thicknessMm }];
  });
  const told = { why, storey: storeyOf(ctx.state.panes), walls, construction: inHand.wallConstruction };
  const outcome = walls.length === 0 ? ({ ok: true, made: [] } as const) : ctx.commit('wall.chain', told);
  if (!outcome.ok) return 'open';
  const made = outcome.made.filter((id) => !memory.ids.includes(id));
  Object.assign(memory, { ids: [...memory.ids, ...made], chain, corners: [...corners] });
  Object.assign(memory, { typed: '', turnDeg: null, angle: null, aim: null, word: null });
  return why === 'draw' ? 'open' : 'closed';
}

const same = (a: Xy, b: Xy): boolean => distance(a, b) < COINCIDENT_MM;

/** With one wall more from where it ends to where it began. */
function withWall(ctx: WallCtx, chain: WallChain): WallEnd {
  const open = layChain(chain);
  const first = open[0] ?? chain.start;
  const last = open.at(-1) ?? chain.start;
  if (same(first, last)) return layWalls(ctx, chain, lastTakesError(open), 'close');
  const d = sub(first, last);
  const way = chain.walls.reduce((deg, w) => deg + w.turnDeg, chain.headingDeg);
  const wall = {
    turnDeg: (Math.atan2(d.y, d.x) * 180) / Math.PI - way,
    mm: distance(first, last),
    sizes: 'middle',
    thicknessMm: ctx.inHand.wallThicknessMm,
  } as const;
  const whole = { ...chain, walls: [...chain.walls, wall] };
  return layWalls(ctx, whole, lastTakesError(layChain(whole, true)), 'close');
}

/** Closes the walls: spreads the error, gives it to the last wall, or draws the wall that is missing. */
export function closeWith(ctx: WallCtx, how: 'spread' | 'lastTakes' | 'close'): WallEnd {
  const { chain } = ctx.memory;
  if (!chain || chain.walls.length < 2) return 'open';
  if (how === 'close') return withWall(ctx, chain);
  const found = errorOf(chain);
  if (!found) return 'open';
  return how === 'spread'
    ? layWalls(ctx, chain, spreadError(found.corners), 'spread')
    : layWalls(ctx, chain, lastTakesError(found.corners), 'close');
}

/**
 * The plan was changed from elsewhere: what was taken back is forgotten, what was moved is taken as it lies. False where
 * the walls no longer hang together, so that there is nothing to go on from.
 */
export function keepUp(ctx: WallCtx): boolean {
  const { memory, plan } = ctx;
  const { chain } = memory;
  if (!chain) return true;
  while (memory.ids.length > 0 && !plan.walls[memory.ids.at(-1) ?? '']) memory.ids.pop();
  const left: WallChain = { ...chain, walls: chain.walls.slice(0, memory.ids.length) };
  const laid = layChain(left);
  const corners = cornersOf(ctx);
  if (!corners) return false;
  const asTold = corners.every((p, i) => same(p, laid[i] ?? p));
  Object.assign(memory, { chain: asTold ? left : asLaid(left, corners), corners });
  return true;
}

/** Corners of the drawn walls; undefined where one no longer begins where the one before it ends. */
function cornersOf({ memory, plan }: WallCtx): Xy[] | undefined {
  const [first] = memory.ids;
  const start = first === undefined ? memory.chain?.start : plan.walls[first]?.a;
  if (!start) return undefined;
  const corners = [start];
  for (const id of memory.ids) {
    const wall = plan.walls[id];
    const at = corners.at(-1);
    if (!wall || !at || !same(wall.a, at)) return undefined;
    corners.push(wall.b);
  }
  return corners;
}
