import { nodePlace } from '../../geometry/places.ts';
import { STEP_KINDS } from '../../network/steps/step-shape.ts';
import type { KeyInput } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import type { Told } from '../steps/proposal.ts';
import { stepAsk } from '../steps/step-ask.ts';
import {
  angleFor,
  blank,
  clears,
  dragTo,
  pressedOn,
  runOf,
  type StepContext,
  type StepMemory,
  show,
} from '../steps/step-hand.ts';
import { defineTool, type ToolEvent } from '../tools/define-tool.ts';

const MISSED = 'Press on the pipe that is to be stepped.';
const MOST_DIGITS = 4;

/** A tap: what is proposed by itself, to be told further by keys. */
function tapped(ctx: StepContext): string {
  const { memory, inHand } = ctx;
  const [pipe] = memory.pipes;
  if (!pipe) {
    ctx.say(MISSED);
    return leave(ctx);
  }
  const angleDeg = angleFor(ctx, pipe.leg);
  const id = inHand.step.goes === 'under' ? 'down' : 'up';
  const first = pipe.ways.find((w) => w.id === id) ?? pipe.ways[0];
  const able = inHand.step.goes === 'aside' ? pipe.ways.find((w) => clears(ctx, pipe, w, angleDeg)) : undefined;
  const way = able ?? first;
  if (!way) return leave(ctx);
  const { leg, alongMm, obstacle } = pipe;
  const { kind } = inHand.step;
  memory.told = { leg, alongMm, kind, way, offsetMm: null, overMm: null, angleDeg, flipped: false, obstacle };
  return 'asking';
}

function ask(ctx: StepContext): void {
  const { memory } = ctx;
  show(ctx);
  if (!memory.told) return;
  const { told, figure, typed, over } = memory;
  const ways = memory.pipes.find((p) => p.leg === told.leg)?.ways ?? [];
  const turns = runOf(ctx, told.leg)?.turns ?? 'elbow';
  const others = memory.pipes.length - 1;
  ctx.ask(stepAsk({ told, ways, turns, figure, typed: figure === 'over' ? over : typed, others }, memory.proposal));
}

function commit(ctx: StepContext): boolean {
  const { proposal } = ctx.memory;
  if (!proposal) return false;
  const outcome = ctx.commit('leg.step', proposal.step);
  if (outcome.ok) ctx.select([{ map: 'runs', id: runOf(ctx, proposal.step.leg)?.id ?? '' }]);
  return outcome.ok;
}

function leave(ctx: StepContext): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  ctx.ask(null);
  return 'idle';
}

const digits = (was: string, key: string): string => (was + key).replace(/^0+/, '').slice(0, MOST_DIGITS);

function tell(ctx: StepContext, change: Partial<Told>): string {
  if (ctx.memory.told) ctx.memory.told = { ...ctx.memory.told, ...change };
  ask(ctx);
  return 'asking';
}

function typedFigure(ctx: StepContext, next: (was: string) => string): string {
  const { memory } = ctx;
  if (memory.figure === 'over') {
    memory.over = next(memory.over);
    return tell(ctx, { overMm: memory.over === '' ? null : Number(memory.over) });
  }
  memory.typed = next(memory.typed);
  return tell(ctx, { offsetMm: memory.typed === '' ? null : Number(memory.typed) });
}

/** The other pipe under the finger is the one that steps. */
function otherPipe(ctx: StepContext): string {
  const [first, ...rest] = ctx.memory.pipes;
  if (first) ctx.memory.pipes = [...rest, first];
  const next = tapped(ctx);
  if (next === 'asking') ask(ctx);
  return next;
}

function askedKey(ctx: StepContext, { key }: KeyInput): string | undefined {
  const { memory, inHand } = ctx;
  const [what, which = ''] = key.split(':');
  if (/^\d+$/.test(key)) return typedFigure(ctx, (was) => digits(was, key));
  if (key === 'Backspace') return typedFigure(ctx, (was) => was.slice(0, -1));
  if (key === 'Escape') return leave(ctx);
  if (key === 'Enter') return commit(ctx) ? leave(ctx) : 'asking';
  if (key === 'flip') return tell(ctx, { flipped: !memory.told?.flipped });
  if (key === 'other') return otherPipe(ctx);
  if (what === 'kind') {
    const kind = STEP_KINDS.find((k) => k === which);
    if (!kind) return undefined;
    ctx.setInHand({ step: { ...inHand.step, kind } });
    return tell(ctx, { kind });
  }
  if (what === 'way') {
    const way = memory.pipes.find((p) => p.leg === memory.told?.leg)?.ways.find((w) => w.id === which);
    return way ? tell(ctx, { way }) : undefined;
  }
  if (what === 'angle') {
    const angleDeg = Number(which);
    ctx.setInHand({ step: { ...inHand.step, angleDeg } });
    return tell(ctx, { angleDeg });
  }
  if (what !== 'figure') return undefined;
  memory.figure = which === 'over' ? 'over' : 'offset';
  return tell(ctx, {});
}

function begin(ctx: StepContext, event: ToolEvent): string {
  Object.assign(ctx.memory, blank());
  ctx.ask(null);
  ctx.memory.screen = event.screen;
  ctx.memory.from = event.plane;
  ctx.memory.pipes = pressedOn(ctx, event);
  const word = ctx.memory.pipes[0]?.obstacle?.name;
  ctx.caught(word === undefined ? null : `${word} lies across`);
  return 'pressing';
}

function lost(ctx: StepContext): string | undefined {
  return ctx.memory.pipes.every((p) => ctx.plan.legs[p.leg]) ? undefined : leave(ctx);
}

/** Steps a pipe round something: a drag away from what lies across it, or a tap and the keys of the pad. */
export default defineTool<StepMemory>({
  id: 'step',
  label: 'Step',
  key: 'k',
  order: 37,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move(ctx, event) {
        const pick = event.snap({ only: ['leg'] });
        const leg = pick.target?.is === 'leg' ? ctx.plan.legs[pick.target.leg] : undefined;
        const a = leg && ctx.plan.nodes[leg.a];
        ctx.draft(a && nodePlace(ctx.plan, a) ? { marks: [{ mark: 'aim', at: pick.at }] } : null);
      },
      down: begin,
      cancel: leave,
    },
    pressing: {
      move(ctx, event) {
        const { screen, pipes } = ctx.memory;
        if (!screen || pipes.length === 0 || apart(screen, event.screen) < SLOP_PX[event.kind]) return;
        dragTo(ctx, event);
        return 'dragging';
      },
      up: tapped,
      cancel: leave,
    },
    dragging: {
      move: dragTo,
      up(ctx, event) {
        dragTo(ctx, event);
        commit(ctx);
        return leave(ctx);
      },
      key(ctx, { key }) {
        const { memory } = ctx;
        if (/^\d$/.test(key)) memory.typed = digits(memory.typed, key);
        else if (key === 'Backspace') memory.typed = memory.typed.slice(0, -1);
        else return undefined;
        ctx.typed(memory.typed);
        return tellTyped(ctx);
      },
      cancel: leave,
    },
    asking: {
      enter: ask,
      down: begin,
      key: askedKey,
      changed: lost,
      cancel: leave,
    },
  },
});

/** Digits typed while the hand holds still count at once. */
function tellTyped(ctx: StepContext): string {
  const { memory } = ctx;
  if (memory.told) {
    memory.told = { ...memory.told, offsetMm: memory.typed === '' ? null : Number(memory.typed) };
    show(ctx);
  }
  return 'dragging';
}
