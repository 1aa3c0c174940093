import type { Vec } from '../../drawing/display-list.ts';
import type { Plan } from '../../plan/plan.ts';
import { apart } from '../hit/shapes.ts';
import { around, type ViewIndex } from '../hit/view-index.ts';
import type { Pick } from '../input/pick.ts';
import type { Catch, SnapContext, SnapOptions } from './define-snap.ts';
import { snapsInOrder } from './snaps.ts';

interface Found {
  readonly id: string;
  readonly priority: number;
  readonly caught: Catch;
  readonly away: number;
}

/** Lines nearer to parallel than this do not cross at a useful place. */
const LEAST_CROSS = 0.2;
/** Along a caught line lengths go in these steps, coarse first, where one of them is near enough. */
const STEPS_MM = [50, 10];

function foot(line: { at: Vec; way: Vec }, p: Vec): Vec {
  const t = (p[0] - line.at[0]) * line.way[0] + (p[1] - line.at[1]) * line.way[1];
  return [line.at[0] + line.way[0] * t, line.at[1] + line.way[1] * t];
}

function crossing(a: { at: Vec; way: Vec }, b: { at: Vec; way: Vec }): Vec | null {
  const turn = a.way[0] * b.way[1] - a.way[1] * b.way[0];
  if (Math.abs(turn) < LEAST_CROSS) return null;
  const t = ((b.at[0] - a.at[0]) * b.way[1] - (b.at[1] - a.at[1]) * b.way[0]) / turn;
  return [a.at[0] + a.way[0] * t, a.at[1] + a.way[1] * t];
}

function stepped(line: { at: Vec; way: Vec }, p: Vec, toleranceMm: number): Vec {
  const t = (p[0] - line.at[0]) * line.way[0] + (p[1] - line.at[1]) * line.way[1];
  for (const step of STEPS_MM) {
    const round = Math.round(t / step) * step;
    if (Math.abs(round - t) <= toleranceMm && step <= 2 * toleranceMm) {
      return [line.at[0] + line.way[0] * round, line.at[1] + line.way[1] * round];
    }
  }
  return foot(line, p);
}

function findAll(ctx: SnapContext, options: SnapOptions): Found[] {
  const only = options.only && new Set(options.only);
  return snapsInOrder
    .filter((snap) => (only ? only.has(snap.id) : snap.whenAsked !== true))
    .flatMap((snap) =>
      snap.find(ctx).map((caught) => {
        const on = caught.is === 'place' ? caught.at : foot(caught, ctx.at);
        return { id: snap.id, priority: snap.priority, caught, away: apart(on, ctx.at) };
      }),
    )
    .filter((f) => f.away <= ctx.toleranceMm)
    .sort((a, b) => a.priority - b.priority || a.away - b.away);
}

/** Two lines that cross near by catch their crossing; one alone is slid along, in round lengths. */
function alongLines(first: Found & { caught: { is: 'line' } }, rest: readonly Found[], ctx: SnapContext) {
  for (const other of rest) {
    if (other.caught.is !== 'line') continue;
    const at = crossing(first.caught, other.caught);
    if (at && apart(at, ctx.at) <= ctx.toleranceMm * 1.5)
      return { at, word: `${first.caught.word}, ${other.caught.word}` };
  }
  return { at: stepped(first.caught, ctx.at, ctx.toleranceMm), word: first.caught.word };
}

const isLine = (f: Found): f is Found & { caught: Extract<Catch, { is: 'line' }> } => f.caught.is === 'line';

/** The place a pointer means: what it catches first, or just where it is. `depth`: see `WorkPlane`. */
export function snapTo(
  plan: Plan,
  index: ViewIndex,
  at: Vec,
  toleranceMm: number,
  depth: number,
  options: SnapOptions,
): Pick {
  const { plane } = index;
  const near = index.near(around(at, toleranceMm)).filter((e) => !e.gone && !options.without?.has(e.id));
  const ctx: SnapContext = { ...options, plan, plane, at, toleranceMm, depth, near };
  const found = findAll(ctx, options);
  const fixed = plane.kind === 'plan' ? 'xy' : 'sz';
  const [best, ...rest] = found;
  if (!best) return { at: plane.place(at, depth), fixed, source: 'free', word: null, target: null };
  const { caught, id } = best;
  if (isLine(best)) {
    const slid = alongLines(best, rest, ctx);
    return { at: plane.place(slid.at, depth), fixed, source: id, word: slid.word, target: caught.target ?? null };
  }
  const whole = caught.is === 'place' ? caught.xyz : undefined;
  return {
    at: whole ?? plane.place(caught.at, depth),
    fixed: whole ? 'xyz' : fixed,
    source: id,
    word: caught.word,
    target: caught.target ?? null,
  };
}
