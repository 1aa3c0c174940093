import { roomName } from '../../catalogue/room-uses.ts';
import { roomAt } from '../../geometry/rooms.ts';
import { JOINT_MM } from '../../geometry/wall-joints.ts';
import { aliveIn } from '../../network/cases.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { KeyInput } from '../editor-api.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { storeyOf } from '../panes.ts';
import { at3 } from '../tools/chain-of-corners.ts';
import { defineTool, type ToolContext, type ToolEvent } from '../tools/define-tool.ts';
import { nameAsk, roomAsk, roomUseOf, type TypedSizes, typeSize } from '../tools/room-ask.ts';
import { freeQuarter, type Quarter, type RoomBox, roomBox } from '../tools/room-box.ts';
import { sizesOf } from '../tools/wall-ask.ts';

interface Memory {
  start: Xy | null;
  /** What the start was caught on; a corner of a wall is always a corner of a room. */
  caught: string | null;
  pressed: readonly [number, number] | null;
  /** The other corner under the pointer. */
  aim: Xy | null;
  typed: TypedSizes;
  way: Quarter;
  dragged: boolean;
}
type Ctx = ToolContext<Memory>;

const LIVE_PEN = 0.35;
const ONLY = ['wallCorner', 'wallFace', 'alignment', 'grid'];
const CORNERS = ['corner of wall', 'end of wall'];
const blank = (): Memory => ({
  start: null,
  caught: null,
  pressed: null,
  aim: null,
  typed: { across: '', up: null },
  way: { across: 1, up: 1 },
  dragged: false,
});

function spaceAt(ctx: Ctx, p: Xy) {
  const { plan, chosen, panes } = ctx.state;
  const alive = aliveIn(plan, chosen);
  return roomAt(plan, storeyOf(panes), p, { has: (id) => alive.has('walls', id) });
}

function leave(ctx: Ctx): string {
  Object.assign(ctx.memory, blank());
  ctx.draft(null);
  ctx.caught(null);
  ctx.typed('');
  ctx.ask(null);
  return 'idle';
}

/** The box as it would be drawn now: of the typed sizes, else up to the pointer. */
function boxNow({ memory, state }: Ctx): RoomBox | undefined {
  const { start, aim, typed, way } = memory;
  if (!start) return undefined;
  const [acrossMm, upMm] = [Number(typed.across), Number(typed.up ?? '')];
  if (acrossMm > 0) {
    // Until the second is typed the room is shown as wide as it is deep.
    return roomBox(state, start, { acrossMm: way.across * acrossMm, upMm: way.up * (upMm > 0 ? upMm : acrossMm) });
  }
  return aim ? roomBox(state, start, { place: aim }) : undefined;
}

const sized = (box: RoomBox): string => `${Math.round(box.acrossMm)} x ${Math.round(box.upMm)} inside`;

function show(ctx: Ctx): void {
  const { memory, inHand } = ctx;
  const box = boxNow(ctx);
  const [first, , third] = box?.inside ?? [];
  if (box && first && third) {
    const middle = { x: (first.x + third.x) / 2, y: (first.y + third.y) / 2 };
    ctx.draft({
      lines: [{ pts: [...box.inside, first].map(at3), ink: 'live', pen: LIVE_PEN }],
      marks: [{ mark: 'aim', at: at3(third) }],
      labels: [{ at: at3(middle), text: sized(box) }],
    });
  } else ctx.draft(memory.start ? { marks: [{ mark: 'aim', at: at3(memory.start) }] } : null);
  if (memory.start && !memory.dragged) ctx.ask(roomAsk(memory.typed, memory.way, inHand, null));
}

/** The walls about a place, lit up before it is tapped. */
function look(ctx: Ctx, event: ToolEvent): void {
  const space = event.pane === 'plan' ? spaceAt(ctx, event.floor) : undefined;
  const corners = space?.outline.map(at3) ?? [];
  ctx.caught(space ? (ctx.plan.rooms[space.rooms[0] ?? '']?.name ?? 'closed space') : null);
  ctx.draft(space ? { lines: [{ pts: [...corners, ...corners.slice(0, 1)], ink: 'live', pen: LIVE_PEN }] } : null);
}

function aimAt(ctx: Ctx, event: ToolEvent): void {
  const { start } = ctx.memory;
  const pick = event.snap({ only: ONLY, ...(start ? { earlier: [at3(start)] } : {}) });
  ctx.memory.aim = { x: pick.at.x, y: pick.at.y };
  ctx.caught(pick.word);
}

function draw(ctx: Ctx): string {
  const { inHand, state } = ctx;
  const box = boxNow(ctx);
  if (!box) {
    ctx.say('A room needs two corners that are apart, and more than its walls between them.');
    return 'sizing';
  }
  const outcome = ctx.commit('room.box', {
    storey: storeyOf(state.panes),
    inside: box.inside,
    thicknessMm: inHand.wallThicknessMm,
    construction: inHand.wallConstruction,
    use: inHand.roomUse,
  });
  if (!outcome.ok) return 'sizing';
  const [made] = outcome.made;
  if (made !== undefined) ctx.select([{ map: 'rooms', id: made }]);
  if (box.offMm > JOINT_MM)
    ctx.say(`A wall that stands there is ${Math.round(box.offMm)} off what was told; it was taken.`);
  return leave(ctx);
}

/** A space that was tapped is asked what it is; one that has a name already is chosen, so that it can be changed. */
function askAt(ctx: Ctx, seed: Xy): string {
  const there = spaceAt(ctx, seed)?.rooms[0];
  if (there !== undefined) {
    ctx.select([{ map: 'rooms', id: there }]);
    return leave(ctx);
  }
  ctx.memory.start = seed;
  ctx.ask(nameAsk(ctx.inHand));
  return 'naming';
}

function nameKey(ctx: Ctx, input: KeyInput): string | undefined {
  const use = roomUseOf(input.key);
  const { start } = ctx.memory;
  if (input.key === 'Escape') return leave(ctx);
  if (!start || (use === undefined && input.key !== 'Enter')) return undefined;
  if (use !== undefined) ctx.setInHand({ roomUse: use });
  return nameAt(ctx, start);
}

/** Names the space about a place by the use in hand. */
function nameAt(ctx: Ctx, seed: Xy): string {
  const space = spaceAt(ctx, seed);
  const use = ctx.inHand.roomUse;
  const name = roomName(use, new Set(Object.values(ctx.plan.rooms).map((r) => r.name)));
  const outcome = ctx.commit('room.add', { storey: storeyOf(ctx.state.panes), seed, name, use });
  const made = outcome.ok ? outcome.made[0] : undefined;
  if (made !== undefined) ctx.select([{ map: 'rooms', id: made }]);
  if (made !== undefined && !space) ctx.say('No walls close round this place yet.');
  return leave(ctx);
}

function key(ctx: Ctx, input: KeyInput): string | undefined {
  const { memory } = ctx;
  const { typed, start } = memory;
  const now = typeSize(typed, input.key);
  const sizes = sizesOf(input.key);
  const use = roomUseOf(input.key);
  if (now) memory.typed = now;
  else if (sizes) ctx.setInHand({ sizes });
  else if (use !== undefined) ctx.setInHand({ roomUse: use });
  else if (input.key === 'ArrowLeft' || input.key === 'ArrowRight')
    memory.way = { ...memory.way, across: input.key === 'ArrowLeft' ? -1 : 1 };
  else if (input.key === 'ArrowUp' || input.key === 'ArrowDown')
    memory.way = { ...memory.way, up: input.key === 'ArrowUp' ? 1 : -1 };
  else if (input.key === 'Escape') return leave(ctx);
  else if (input.key !== 'Enter') return undefined;
  else if (typed.across === '') return start ? nameAt(ctx, start) : leave(ctx);
  else if (typed.up === null || typed.up === '') memory.typed = { ...typed, up: '' };
  else return draw(ctx);
  ctx.typed(memory.typed.across);
  show(ctx);
  return 'sizing';
}

function press(ctx: Ctx, event: ToolEvent): void {
  const pick = event.snap({ only: ONLY });
  Object.assign(ctx.memory, blank(), {
    start: { x: pick.at.x, y: pick.at.y },
    caught: pick.word,
    pressed: event.screen,
  });
  look(ctx, event);
}

const slid = ({ memory }: Ctx, event: ToolEvent): boolean =>
  memory.pressed !== null && apart(memory.pressed, event.screen) >= SLOP_PX[event.kind];

/**
 * Draws a room from corner to corner in one drag, or from a corner that is tapped by its sizes; walls that stand already
 * are taken. A tap in a closed space asks what it is, and names it.
 */
export default defineTool<Memory>({
  id: 'room',
  label: 'Room',
  key: 'n',
  order: 55,
  initial: 'idle',
  memory: blank,
  states: {
    idle: {
      move: look,
      down(ctx, event) {
        press(ctx, event);
        return 'placing';
      },
      cancel: leave,
    },
    naming: {
      down(ctx, event) {
        ctx.ask(null);
        press(ctx, event);
        return 'placing';
      },
      key: nameKey,
      changed(ctx) {
        ctx.ask(nameAsk(ctx.inHand));
        return undefined;
      },
      cancel: leave,
    },
    placing: {
      move(ctx, event) {
        ctx.memory.dragged ||= event.pane === 'plan' && slid(ctx, event);
        if (!ctx.memory.dragged) return;
        aimAt(ctx, event);
        show(ctx);
      },
      up(ctx, event) {
        const { memory } = ctx;
        if (event.pane === 'face') {
          ctx.say('Rooms are named in the plan.');
          return leave(ctx);
        }
        if (memory.dragged) {
          aimAt(ctx, event);
          return draw(ctx) === 'sizing' ? leave(ctx) : 'idle';
        }
        const corner = memory.caught !== null && CORNERS.includes(memory.caught);
        if (!memory.start || (!corner && spaceAt(ctx, event.floor))) return askAt(ctx, event.floor);
        Object.assign(memory, { aim: null, way: freeQuarter(ctx.state, memory.start) });
        show(ctx);
        return 'sizing';
      },
      cancel: leave,
    },
    sizing: {
      move(ctx, event) {
        aimAt(ctx, event);
        show(ctx);
      },
      down(ctx, event) {
        aimAt(ctx, event);
        show(ctx);
        return 'closing';
      },
      key,
      changed(ctx) {
        show(ctx);
        return undefined;
      },
      cancel: leave,
    },
    closing: {
      move(ctx, event) {
        aimAt(ctx, event);
        show(ctx);
      },
      up(ctx, event) {
        ctx.memory.typed = { across: '', up: null };
        aimAt(ctx, event);
        return draw(ctx);
      },
      cancel(ctx) {
        ctx.memory.aim = null;
        show(ctx);
        return 'sizing';
      },
    },
  },
});
