import { add, cross, distance, left, scale, sub, unit } from '../../geometry/vec.ts';
import type { HeightRef, Xy } from '../../plan/records/parts.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import type { Ask, KeyInput } from '../editor-api.ts';
import { storeyOf } from '../panes.ts';
import { aimChain, at3, type Chain } from '../tools/chain-of-corners.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';

/** `figures`: eaves height, then pitch, as they were typed. */
interface Memory extends Chain {
  height: string;
  pitch: string;
}
type Ctx = ToolContext<Memory>;

const ONLY = ['wallCorner', 'rightAngle', 'wallFace', 'alignment', 'grid'];
const LIVE_PEN = 0.5;
const MOST_DIGITS = 5;
const MOST_PITCH_DIGITS = 2;
/** From here on a slope is a wall. */
const STEEPEST_DEG = 85;
const blank = (): Memory => ({ corners: [], aim: null, word: null, height: '', pitch: '' });

const TAPS = ['Tap where the eaves begin.', 'Tap where the eaves end.', 'Tap how far up the slope goes.'] as const;

/** The eaves so that the slope rises to their left, and the outline up to the third place, square to them. */
function slope([a, b, up]: readonly Xy[]): { eaves: readonly [Xy, Xy]; outline: Xy[] } | undefined {
  if (!a || !b || !up || distance(a, b) < COINCIDENT_MM) return undefined;
  const deep = cross(unit(sub(b, a)), sub(up, a));
  if (Math.abs(deep) < COINCIDENT_MM) return undefined;
  const eaves = deep > 0 ? ([a, b] as const) : ([b, a] as const);
  const rise = scale(left(unit(sub(eaves[1], eaves[0]))), Math.abs(deep));
  return { eaves, outline: [eaves[0], eaves[1], add(eaves[1], rise), add(eaves[0], rise)] };
}

function tapAsk(n: number): Ask {
  return { title: 'Roof', figure: null, unit: '', says: [TAPS[n] ?? ''], rows: [], enter: null };
}

function figureAsk(ctx: Ctx): Ask {
  const { memory, state } = ctx;
  if (state.toolState === 'height') {
    const ceiling = ctx.plan.storeys[storeyOf(state.panes)]?.ceilingMm;
    const says = ceiling === undefined ? [] : [`Empty: at the ceiling, ${Math.round(ceiling)}, until it is measured.`];
    return { title: 'Eaves, off the floor', figure: memory.height, unit: 'mm', says, rows: [], enter: 'next' };
  }
  return { title: 'Pitch', figure: memory.pitch, unit: 'degrees', says: [], rows: [], enter: 'draw' };
}

function show(ctx: Ctx): void {
  const { memory } = ctx;
  ctx.caught(memory.word);
  const places = memory.aim ? [...memory.corners, memory.aim] : memory.corners;
  const found = slope(places);
  const ring = found ? [...found.outline, ...found.outline.slice(0, 1)] : places.slice(0, 2);
  const mark = memory.aim ?? memory.corners.at(-1);
  if (!mark) {
    ctx.draft(null);
    return;
  }
  ctx.draft({
    lines: ring.length > 1 ? [{ pts: ring.map(at3), ink: 'live', pen: LIVE_PEN }] : [],
    marks: [{ mark: 'aim', at: at3(mark) }],
  });
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  ctx.ask(null);
  return 'idle';
}

function look(ctx: Ctx, event: ToolEvent): void {
  aimChain(ctx, event, ONLY, '');
  show(ctx);
}

function tapped(ctx: Ctx): string {
  const { memory } = ctx;
  const { aim, corners } = memory;
  const last = corners.at(-1);
  if (aim && last && distance(aim, last) < COINCIDENT_MM) return 'tapping';
  if (aim) corners.push(aim);
  memory.aim = null;
  if (corners.length === TAPS.length && !slope(corners)) {
    ctx.say('The slope goes up to a place away from its eaves.');
    corners.pop();
  }
  show(ctx);
  if (corners.length === TAPS.length) return 'height';
  ctx.ask(tapAsk(corners.length));
  return 'tapping';
}

function draw(ctx: Ctx): string {
  const { memory, state } = ctx;
  const found = slope(memory.corners);
  const pitchDeg = Number(memory.pitch);
  if (memory.pitch === '' || pitchDeg > STEEPEST_DEG) {
    ctx.say(memory.pitch === '' ? 'A roof needs its pitch.' : `A roof is less steep than ${STEEPEST_DEG} degrees.`);
    return 'pitch';
  }
  if (!found) return leave(ctx);
  const storey = storeyOf(state.panes);
  const told = memory.height !== '';
  const height: HeightRef = told
    ? { from: 'floor', of: storey, mm: Number(memory.height) }
    : { from: 'ceiling', of: storey, mm: 0 };
  const [a, b] = found.eaves;
  const outcome = ctx.commit('roof.set', {
    storey,
    outline: found.outline,
    eaves: { a, b, height },
    pitchDeg,
    sureness: told ? 'seen' : 'assumed',
  });
  if (!outcome.ok) return 'pitch';
  const [made] = outcome.made;
  if (made !== undefined) ctx.select([{ map: 'roofs', id: made }]);
  return leave(ctx);
}

/** Digits of the figure that is asked; Enter goes on, Backspace on an empty one goes back. */
function figureKey(of: 'height' | 'pitch', most: number, on: (ctx: Ctx) => string, back: string) {
  return (ctx: Ctx, { key }: KeyInput): string | undefined => {
    const { memory } = ctx;
    if (/^\d+$/.test(key)) memory[of] = (memory[of] + key).replace(/^0+(?=\d)/, '').slice(0, most);
    else if (key === 'Enter') return on(ctx);
    else if (key === 'Escape') return leave(ctx);
    else if (key !== 'Backspace') return undefined;
    else if (memory[of] === '') {
      if (of === 'height') memory.corners.pop();
      return back;
    } else memory[of] = memory[of].slice(0, -1);
    ctx.typed(memory[of]);
    ctx.ask(figureAsk(ctx));
    return of;
  };
}

const asks = (ctx: Ctx): void => {
  ctx.typed('');
  ctx.ask(figureAsk(ctx));
};

function tapKey(ctx: Ctx, { key }: KeyInput): string | undefined {
  const { corners } = ctx.memory;
  if (key === 'Escape') return leave(ctx);
  if (key !== 'Backspace') return undefined;
  corners.pop();
  if (corners.length === 0) return leave(ctx);
  show(ctx);
  ctx.ask(tapAsk(corners.length));
  return 'tapping';
}

/** A slope by three places, both ends of its eaves and how far it goes up, then the height of the eaves and the pitch. */
export default defineTool<Memory>({
  id: 'roof',
  label: 'Roof',
  key: 'f',
  order: 62,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        if (event.pane === 'face') {
          ctx.say('Roofs are drawn in the plan.');
          return;
        }
        look(ctx, event);
        return 'starting';
      },
      cancel: leave,
    },
    starting: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        return tapped(ctx);
      },
      cancel: leave,
    },
    tapping: {
      enter(ctx) {
        ctx.ask(tapAsk(ctx.memory.corners.length));
        show(ctx);
      },
      move: look,
      down(ctx, event) {
        look(ctx, event);
        return 'placing';
      },
      key: tapKey,
      cancel: leave,
    },
    placing: {
      move: look,
      up(ctx, event) {
        look(ctx, event);
        return tapped(ctx);
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        show(ctx);
        return 'tapping';
      },
    },
    height: {
      enter: asks,
      key: figureKey('height', MOST_DIGITS, () => 'pitch', 'tapping'),
      cancel: leave,
    },
    pitch: {
      enter: asks,
      key: figureKey('pitch', MOST_PITCH_DIGITS, draw, 'height'),
      cancel: leave,
    },
  },
});
