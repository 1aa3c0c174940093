import type { Ask, AskKey, KeyInput } from '../editor-api.ts';
import { wayAsSeen, workPlane } from '../input/work-plane.ts';
import type { ToolEvent, ToolStateChart } from './define-tool.ts';
import { figureKey, sizeAsk } from './void-figure.ts';
import { joistsFor, type Ways, waysOf } from './void-joists.ts';
import { type Ctx, joistsShown, LIVE_PEN, leave, type Memory, ring3, slid } from './void-memory.ts';
import { toldVoid } from './void-told.ts';

const NOT_KNOWN = 'not known';
/** A way drawn by hand goes in whole degrees. */
const STEP_DEG = 1;
/** Shorter than this on the screen a drag has no way. */
const LEAST_MM = 50;

function ways({ memory, plan, state }: Ctx): Ways {
  const plane = workPlane(plan, state.panes.plan.view);
  return waysOf(memory.outline, (way) => (plane ? wayAsSeen(plane, way) : [way.x, way.y]));
}

/** The joists as far as they were told; null before their way is. */
function told(ctx: Ctx, depthMm: number | null) {
  const { memory, assumptions, inHand } = ctx;
  const usual = assumptions.joists;
  const kind = inHand.voidKind;
  if (!usual || memory.wayDeg === null || (kind !== 'ceiling' && kind !== 'floor')) return null;
  const { outline, wayDeg, centresMm } = memory;
  const { storey } = toldVoid(ctx, outline);
  return joistsFor({ kind, storey, outline, wayDeg, centresMm, depthMm }, usual);
}

function show(ctx: Ctx): void {
  const { outline } = ctx.memory;
  const joists = told(ctx, null);
  ctx.draft({
    pane: 'plan',
    lines: [{ pts: ring3(outline), ink: 'live', pen: LIVE_PEN }, ...(joists ? joistsShown(outline, joists) : [])],
  });
}

function wayAsk(ctx: Ctx): Ask {
  const { short } = ways(ctx);
  const way = (key: string, label: 'across' | 'along'): AskKey => ({
    key,
    label,
    icon: label === 'across' ? 'joists-across' : 'joists-along',
    on: label === short,
  });
  return {
    title: 'Which way do the joists run?',
    figure: null,
    unit: '',
    says: [`The short span is ${short}. Or draw the way with a drag.`],
    rows: [[way('1', 'across'), way('2', 'along')], [{ key: '3', label: 'no joists, or not known' }]],
    enter: null,
  };
}

/** The first question: which way. The outline waits for the answer and nothing is made before the last one. */
export function askWay(ctx: Ctx): string {
  ctx.memory.wayDeg = null;
  ctx.memory.figure = '';
  ctx.caught(null);
  ctx.ask(wayAsk(ctx));
  show(ctx);
  return 'way';
}

function askCentres(ctx: Ctx): string {
  const { memory, assumptions, inHand } = ctx;
  memory.centresMm = null;
  ctx.ask(
    sizeAsk({
      title: 'Centres of the joists',
      figure: memory.figure,
      keys: assumptions.voidChoices?.centresMm ?? [],
      last: inHand.centresMm,
      without: NOT_KNOWN,
    }),
  );
  show(ctx);
  return 'centres';
}

function askDepth(ctx: Ctx): string {
  const { memory, assumptions, inHand } = ctx;
  ctx.ask(
    sizeAsk({
      title: 'Depth of the joists',
      figure: memory.figure,
      keys: assumptions.voidChoices?.depthMm ?? [],
      last: inHand.joistDepthMm,
      without: NOT_KNOWN,
    }),
  );
  show(ctx);
  return 'depth';
}

function way(ctx: Ctx, deg: number): string {
  ctx.memory.wayDeg = deg;
  ctx.memory.figure = '';
  return askCentres(ctx);
}

function make(ctx: Ctx, depthMm: number | null): string {
  const { memory } = ctx;
  const joists = told(ctx, depthMm);
  const { centresMm } = memory;
  const outcome = ctx.commit('void.add', { ...toldVoid(ctx, memory.outline), joists });
  const made = outcome.ok ? outcome.made[0] : undefined;
  if (made === undefined) return askDepth(ctx);
  ctx.select([{ map: 'voids', id: made }]);
  if (joists) ctx.setInHand({ centresMm, joistDepthMm: depthMm });
  return leave(ctx);
}

function wayKey(ctx: Ctx, { key }: KeyInput): string | undefined {
  const { acrossDeg, alongDeg, short } = ways(ctx);
  if (key === '1') return way(ctx, acrossDeg);
  if (key === '2') return way(ctx, alongDeg);
  if (key === 'Enter') return way(ctx, short === 'across' ? acrossDeg : alongDeg);
  if (key === '3') return make(ctx, null);
  return key === 'Escape' || key === 'Backspace' ? leave(ctx) : undefined;
}

function centresKey(ctx: Ctx, input: KeyInput): string | undefined {
  const { memory, assumptions, inHand } = ctx;
  const read = figureKey(input, memory.figure, assumptions.voidChoices?.centresMm ?? [], inHand.centresMm);
  if (read.is === 'none') return undefined;
  if (read.is === 'back') return askWay(ctx);
  if (read.is === 'typing') {
    memory.figure = read.figure;
    return askCentres(ctx);
  }
  memory.centresMm = read.mm;
  memory.figure = '';
  return askDepth(ctx);
}

function depthKey(ctx: Ctx, input: KeyInput): string | undefined {
  const { memory, assumptions, inHand } = ctx;
  const read = figureKey(input, memory.figure, assumptions.voidChoices?.depthMm ?? [], inHand.joistDepthMm);
  if (read.is === 'none') return undefined;
  if (read.is === 'told') return make(ctx, read.mm);
  memory.figure = read.is === 'typing' ? read.figure : '';
  return read.is === 'back' ? askCentres(ctx) : askDepth(ctx);
}

/** The way drawn from where the press went down to the pointer, in degrees of the house; null while it is too short. */
function drawnDeg(ctx: Ctx, event: ToolEvent): number | null {
  const { start } = ctx.memory;
  if (!start || !slid(ctx, event)) return null;
  const [dx, dy] = [event.floor.x - start.x, event.floor.y - start.y];
  if (Math.hypot(dx, dy) < LEAST_MM) return null;
  return Math.round((Math.atan2(dy, dx) * 180) / Math.PI / STEP_DEG) * STEP_DEG;
}

function turn(ctx: Ctx, event: ToolEvent): void {
  const deg = drawnDeg(ctx, event);
  ctx.memory.wayDeg = deg;
  ctx.caught(deg === null ? null : `${((deg % 180) + 180) % 180} degrees`);
  show(ctx);
}

/** A second finger moves the paper under the question, and the question stays. */
const stays = (again: (ctx: Ctx) => string) => ({ interrupt: again, changed: () => undefined });

/** Three questions about the joists of an outline: their way, their centres, their depth. */
export const askStates: Readonly<Record<string, ToolStateChart<Memory>>> = {
  way: {
    down(ctx, event) {
      if (event.pane === 'face') return;
      ctx.memory.pressed = event.screen;
      ctx.memory.start = event.floor;
      return 'turning';
    },
    key: wayKey,
    cancel: leave,
    ...stays(askWay),
  },
  turning: {
    move: turn,
    up(ctx, event) {
      const deg = drawnDeg(ctx, event);
      ctx.caught(null);
      return deg === null ? askWay(ctx) : way(ctx, deg);
    },
    cancel: askWay,
  },
  centres: { key: centresKey, cancel: leave, ...stays(askCentres) },
  depth: { key: depthKey, cancel: leave, ...stays(askDepth) },
};
