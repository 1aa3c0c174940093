import { add, direction, distance, left, scale, sub, unit } from '../../geometry/vec.ts';
import type { Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { at3 } from './chain-of-corners.ts';
import { wallAsk } from './wall-ask.ts';
import { waysOf } from './wall-chain.ts';
import { aimed, nextCorners, nextTurn, type WallCtx } from './wall-steps.ts';

const LIVE_PEN = 0.5;
const STUB_PEN = 0.35;
/** So long is the line that shows which way a wall will go before it has a length, px. */
const STUB_PX = 48;

/** Which way the next wall goes, where it is told on the pad and has no length yet. */
function stub(ctx: WallCtx): readonly [Xy, Xy] | undefined {
  const { memory } = ctx;
  const from = memory.corners.at(-1);
  const { chain } = memory;
  if (!chain || !from || (memory.turnDeg === null && aimed(memory))) return undefined;
  const before = chain.walls.length === 0 ? chain.headingDeg : (waysOf(chain).at(-1) ?? chain.headingDeg);
  return [from, add(from, scale(direction(before + nextTurn(memory, chain)), STUB_PX * ctx.mmPerPx))];
}

/** Shows the next wall in the live layer, and what may be typed for it. */
export function showWall(ctx: WallCtx): void {
  const { memory } = ctx;
  ctx.caught(memory.word);
  ctx.typed(memory.typed);
  ctx.ask(wallAsk(ctx));
  const corners = nextCorners(ctx);
  const [from, to] = [corners?.at(-2), corners?.at(-1)];
  if (!from || !to || distance(from, to) < COINCIDENT_MM) {
    const way = stub(ctx);
    const mark = memory.aim ?? way?.[1];
    if (!mark) ctx.draft(null);
    else {
      const lines = way ? [{ pts: way.map(at3), ink: 'live', pen: STUB_PEN }] : [];
      ctx.draft({ lines, marks: [{ mark: 'aim', at: at3(mark) }] });
    }
    return;
  }
  const side = scale(left(unit(sub(to, from))), ctx.inHand.wallThicknessMm / 2);
  const edge = (k: number) => [from, to].map((p) => at3(add(p, scale(side, k))));
  ctx.draft({
    lines: [1, -1].map((k) => ({ pts: edge(k), ink: 'wallEdge', pen: LIVE_PEN })),
    marks: [{ mark: 'aim', at: at3(to) }],
    labels: [{ at: at3(scale(add(from, to), 0.5)), text: memory.typed || String(Math.round(distance(from, to))) }],
  });
}
