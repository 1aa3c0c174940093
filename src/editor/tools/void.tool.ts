import type { Vec } from '../../drawing/display-list.ts';
import { distance } from '../../geometry/vec.ts';
import type { HeightRef, Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { KeyInput } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { workPlane } from '../input/work-plane.ts';
import { storeyOf } from '../panes.ts';
import { aimChain, at3, type Chain } from './chain-of-corners.ts';
import { defineTool, type ToolContext, type ToolEvent } from './define-tool.ts';

interface Memory extends Chain {
  pressed: Vec | null;
}
type Ctx = ToolContext<Memory>;

const ONLY = ['wallCorner', 'rightAngle', 'wallFace', 'alignment', 'grid'];
const LIVE_PEN = 0.35;
const LEAST_CORNERS = 3;
const blank = (): Memory => ({ corners: [], aim: null, word: null, pressed: null });

const look = (ctx: Ctx, event: ToolEvent): void => aimChain(ctx, event, ONLY, 'closes the void');

/** Pressed and drawn across: a box between the two corners, upright as the plan is seen. */
function boxTo({ memory, plan, state }: Ctx): Xy[] {
  const { aim, corners } = memory;
  const [from] = corners;
  const plane = workPlane(plan, state.panes.plan.view);
  if (!from || !aim || !plane) return [];
  const [[x0, y0], [x1, y1]] = [plane.onto(at3(from)), plane.onto(at3(aim))];
  const corner = (on: Vec): Xy => {
    const { x, y } = plane.place(on, 0);
    return { x, y };
  };
  return [from, corner([x1, y0]), aim, corner([x0, y1])];
}

function show(ctx: Ctx, ring: readonly Xy[]): void {
  ctx.caught(ctx.memory.word);
  const { aim } = ctx.memory;
  if (!aim) {
    ctx.draft(null);
    return;
  }
  const pts = ring.map(at3);
  ctx.draft({
    lines: pts.length > 1 ? [{ pts, ink: 'live', pen: LIVE_PEN }] : [],
    marks: [{ mark: 'aim', at: at3(aim) }],
  });
}

/** Between which heights a void of each kind lies until somebody measures: all told from floor and ceiling. */
function between(ctx: Ctx, storey: string): { bottom: HeightRef | null; top: HeightRef | null } {
  const deep = ctx.plan.storeys[storey]?.buildUpMm ?? ctx.assumptions.buildUpMm;
  const floor = (mm: number): HeightRef => ({ from: 'floor', of: storey, mm });
  const ceiling = (mm: number): HeightRef => ({ from: 'ceiling', of: storey, mm });
  const kind = ctx.inHand.voidKind;
  if (kind === 'ceiling') return { bottom: ceiling(0), top: ceiling(deep) };
  if (kind === 'floor' || kind === 'slab') return { bottom: floor(-deep), top: floor(0) };
  return { bottom: floor(0), top: ceiling(0) };
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

function finish(ctx: Ctx, outline: readonly Xy[]): string {
  const storey = storeyOf(ctx.state.panes);
  const area = outline.reduce((sum, p, i) => {
    const q = outline[(i + 1) % outline.length] ?? p;
    return sum + p.x * q.y - q.x * p.y;
  }, 0);
  if (outline.length < LEAST_CORNERS || Math.abs(area) < 1) {
    ctx.say('A void needs three corners that are not in line.');
    return 'outlining';
  }
  const told = { storey, kind: ctx.inHand.voidKind, outline, ...between(ctx, storey) };
  const outcome = ctx.commit('void.add', told);
  const made = outcome.ok ? outcome.made[0] : undefined;
  if (made !== undefined) ctx.select([{ map: 'voids', id: made }]);
  return leave(ctx);
}

function key(ctx: Ctx, input: KeyInput): string | undefined {
  const { corners } = ctx.memory;
  if (input.key === 'Enter') return finish(ctx, corners);
  if (input.key === 'Escape') return leave(ctx);
  if (input.key !== 'Backspace') return undefined;
  corners.pop();
  if (corners.length === 0) return leave(ctx);
  show(ctx, corners);
  return 'outlining';
}

const slid = (ctx: Ctx, event: ToolEvent): boolean =>
  ctx.memory.pressed !== null && apart(ctx.memory.pressed, event.screen) >= SLOP_PX[event.kind];

/** Outlines a void by its corners, closed on the first one or with Enter; or draws a box across two corners in one drag. */
export default defineTool<Memory>({
  id: 'void',
  label: 'Void',
  key: 'v',
  order: 57,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move(ctx, event) {
        look(ctx, event);
        show(ctx, []);
      },
      down(ctx, event) {
        if (event.pane === 'face') {
          ctx.say('Voids are outlined in the plan.');
          return;
        }
        look(ctx, event);
        ctx.memory.corners = ctx.memory.aim ? [ctx.memory.aim] : [];
        ctx.memory.pressed = event.screen;
        return 'starting';
      },
      cancel: leave,
    },
    starting: {
      move(ctx, event) {
        look(ctx, event);
        const box = slid(ctx, event) ? boxTo(ctx) : [];
        show(ctx, [...box, ...box.slice(0, 1)]);
      },
      up(ctx, event) {
        look(ctx, event);
        if (!slid(ctx, event)) return 'outlining';
        const next = finish(ctx, boxTo(ctx));
        return next === 'outlining' ? leave(ctx) : next;
      },
      cancel: leave,
    },
    outlining: {
      move(ctx, event) {
        look(ctx, event);
        show(ctx, [...ctx.memory.corners, ...(ctx.memory.aim ? [ctx.memory.aim] : [])]);
      },
      down(ctx, event) {
        look(ctx, event);
        return 'placing';
      },
      key,
      cancel: leave,
    },
    placing: {
      move(ctx, event) {
        look(ctx, event);
        show(ctx, [...ctx.memory.corners, ...(ctx.memory.aim ? [ctx.memory.aim] : [])]);
      },
      up(ctx, event) {
        look(ctx, event);
        const { corners, aim } = ctx.memory;
        const last = corners.at(-1);
        if (aim && aim === corners[0]) return finish(ctx, corners);
        if (aim && last && distance(aim, last) >= COINCIDENT_MM) corners.push(aim);
        show(ctx, corners);
        return 'outlining';
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        show(ctx, ctx.memory.corners);
        return 'outlining';
      },
    },
  },
});
