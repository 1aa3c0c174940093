import { sayException } from '../../drawing/building/joist-items.ts';
import { endEdges } from '../../drawing/building/span-items.ts';
import { grid } from '../../geometry/joist-lines.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Ask, AskKey, KeyInput, VoidTask } from '../editor-api.ts';
import { wayAsSeen, workPlane } from '../input/work-plane.ts';
import { figureKey } from './void-figure.ts';
import { firstFrom, offFirst } from './void-joists.ts';
import { backToSelect, type Ctx, chosenVoid, leave } from './void-memory.ts';

const DONE: AskKey = { key: 'Escape', label: 'done' };
/** What a single joist may be besides moved. */
const WHATS = ['missing', 'doubled', 'trimmer'] as const;
const PLAIN = 'plain';
const TURN = 'other way';
const ENDS = 'both ends';

/** Is something done to the chosen void, rather than a new one drawn? */
export const isTask = (task: VoidTask): boolean => task !== 'room' && task !== 'outline';

/** Gives a task up; leaving for another tool comes by here a second time, when there is none in hand any more. */
export const endTask = (ctx: Ctx): string | undefined => (isTask(ctx.inHand.voidTask) ? backToSelect(ctx) : leave(ctx));

const exceptionOf = (v: Void, index: number) => v.joists?.exceptions.find((e) => e.index === index);

function tapped(ctx: Ctx, v: Void): number | null {
  const { joist } = ctx.inHand;
  return joist?.void === v.id ? joist.index : null;
}

function joistAsk(ctx: Ctx, v: Void, index: number): Ask {
  const now = exceptionOf(v, index);
  const { figure } = ctx.memory;
  const says = now ? sayException(now) : '';
  return {
    title: `Joist ${index + 1}`,
    figure,
    unit: 'mm',
    says: [says === '' ? 'Like the others. Type how far it is moved.' : says],
    rows: [
      WHATS.map((what) => ({ key: what, label: what, on: now?.what === what })),
      [{ key: TURN, label: TURN }, { key: PLAIN, label: 'like the others' }, DONE],
    ],
    enter: figure === '' || figure === '-' ? null : `move it ${figure.replace('-', '')}`,
  };
}

/** The wall that joists are counted from, as it lies on the page. */
function wallWord({ plan, state }: Ctx, wayDeg: number): string {
  const plane = workPlane(plan, state.panes.plan.view);
  const { across } = grid({ wayDeg });
  const [x, y] = plane ? wayAsSeen(plane, across) : [across.x, across.y];
  if (Math.abs(x) > Math.abs(y)) return x > 0 ? 'left' : 'right';
  return y > 0 ? 'lower' : 'upper';
}

function firstAsk(ctx: Ctx, v: Void): Ask {
  const { figure } = ctx.memory;
  const { joists } = v;
  const now = joists ? Math.round(offFirst(v.outline, joists)) : 0;
  const side = joists ? wallWord(ctx, joists.wayDeg) : 'left';
  return {
    title: 'Where is the first joist?',
    figure,
    unit: 'mm',
    says: [`Drag a joist to where one was found, or type its middle off the ${side} edge: now ${now}.`],
    rows: [[DONE]],
    enter: figure === '' ? null : figure,
  };
}

const PLAINLY: Readonly<Record<'bearing' | 'hole' | 'joist', Omit<Ask, 'figure' | 'unit' | 'enter'>>> = {
  joist: { title: 'Tap a joist, or drag it across', says: [], rows: [[DONE]] },
  bearing: {
    title: 'What do the joists lie on?',
    says: ['Tap two walls, or draw the line of a beam.'],
    rows: [[{ key: ENDS, label: 'the walls at both ends' }], [DONE]],
  },
  hole: { title: 'Cut a hole', says: ['Drag across it, or tap its corners.'], rows: [[DONE]] },
};

/** Shows what is to be done to the chosen void. */
export function askTask(ctx: Ctx): void {
  const task = ctx.inHand.voidTask;
  const v = chosenVoid(ctx);
  if (!isTask(task) || !v) {
    ctx.ask(null);
    return;
  }
  const index = task === 'joist' ? tapped(ctx, v) : null;
  if (index !== null) ctx.ask(joistAsk(ctx, v, index));
  else if (task === 'first') ctx.ask(firstAsk(ctx, v));
  else if (task === 'bearing' || task === 'hole' || task === 'joist')
    ctx.ask({ ...PLAINLY[task], figure: null, unit: '', enter: null });
}

function typing(ctx: Ctx, input: KeyInput): boolean {
  const { memory } = ctx;
  const sign = memory.figure.startsWith('-') ? '-' : '';
  const read = figureKey(input, memory.figure.replace('-', ''), [], null);
  if (read.is !== 'typing') return false;
  memory.figure = `${sign}${read.figure}`;
  return true;
}

function joistKey(ctx: Ctx, input: KeyInput, v: Void, index: number): string | undefined {
  const { memory } = ctx;
  const now = exceptionOf(v, index) ?? { offsetMm: 0, what: '' };
  const set = (change: { offsetMm: number; what: string } | null): string => {
    ctx.commit('void.joist', { void: v.id, index, change });
    memory.figure = '';
    askTask(ctx);
    return 'idle';
  };
  const what = WHATS.find((w) => w === input.key);
  if (what) return set({ offsetMm: now.offsetMm, what: now.what === what ? '' : what });
  if (input.key === PLAIN) return set(null);
  if (input.key === 'Enter' && /\d/.test(memory.figure)) {
    return set({ offsetMm: Number(memory.figure), what: now.what });
  }
  if (input.key === TURN || input.key === '-') {
    memory.figure = memory.figure.startsWith('-') ? memory.figure.slice(1) : `-${memory.figure}`;
  } else if (!typing(ctx, input)) return undefined;
  askTask(ctx);
  return 'idle';
}

function firstKey(ctx: Ctx, input: KeyInput, v: Void): string | undefined {
  const { memory } = ctx;
  if (input.key === 'Enter' && memory.figure !== '' && v.joists) {
    const first = firstFrom(v.outline, v.joists.wayDeg, Number(memory.figure));
    ctx.commit('void.joists', { void: v.id, change: { first } });
    return backToSelect(ctx);
  }
  if (!typing(ctx, input)) return undefined;
  askTask(ctx);
  return 'idle';
}

/** A key of the pad or the keyboard while something is done to the chosen void. */
export function taskKey(ctx: Ctx, input: KeyInput): string | undefined {
  const task = ctx.inHand.voidTask;
  const v = chosenVoid(ctx);
  if (!isTask(task) || !v) return undefined;
  const index = task === 'joist' ? tapped(ctx, v) : null;
  const did = index !== null ? joistKey(ctx, input, v, index) : task === 'first' ? firstKey(ctx, input, v) : undefined;
  if (did !== undefined) return did;
  if (task === 'bearing' && input.key === ENDS && v.joists) {
    ctx.commit('void.set', { void: v.id, change: { bearings: endEdges(v, grid(v.joists).way) } });
    return backToSelect(ctx);
  }
  return input.key === 'Escape' ? backToSelect(ctx) : undefined;
}
