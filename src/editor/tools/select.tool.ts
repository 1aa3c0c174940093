import type { Vec } from '../../drawing/display-list.ts';
import type { KeyInput, PlacedFigure, Selected } from '../editor-api.ts';
import type { Asked } from '../figures/ask-figure.ts';
import type { Hit } from '../hit/hit-test.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { wayInHouse, workPlane } from '../input/work-plane.ts';
import { defineTool, type ToolContext, type ToolEvent } from './define-tool.ts';
import { type Drag, dragOf, previewOf } from './drag.ts';
import { lateHand } from './late-hand.ts';

interface Memory {
  /** Taps add and take away, and a drag over what is not chosen draws a box, until it is ended. */
  several: boolean;
  /** The figure that is being told anew. */
  asked: Asked | null;
  pressed: {
    readonly screen: Vec;
    readonly plane: Vec;
    readonly hits: readonly Hit[];
    readonly figure: PlacedFigure | undefined;
  } | null;
  drag: Drag | null;
  /** The last place of a drag over the empty floor, px. */
  panAt: Vec | null;
  /** Where it was last tapped, px. */
  tappedAt: Vec | null;
}
type Ctx = ToolContext<Memory>;

const plain = ({ map, id }: Selected): Selected => ({ map, id });
const sameThing = (a: Selected, b: Selected): boolean => a.map === b.map && a.id === b.id;

/** A pipe is first chosen as its run, then by itself: each leg under the finger is led by its run. */
function choices(ctx: Ctx, hits: readonly Hit[]): Selected[] {
  const all: Selected[] = [];
  const add = (thing: Selected): void => {
    if (!all.some((a) => sameThing(a, thing))) all.push(plain(thing));
  };
  for (const hit of hits) {
    const pipe =
      hit.map === 'legs' ? ctx.plan.legs[hit.id] : hit.map === 'stretches' ? ctx.plan.stretches[hit.id] : undefined;
    if (pipe) add({ map: 'runs', id: pipe.run });
    add(hit);
  }
  return all;
}

/**
 * The first of them, or the one after what is chosen already: tapping again in the same place goes deeper. In another place only
 * a chosen run gives way, to the pipe of it that is tapped.
 */
function next(ctx: Ctx, all: readonly Selected[], event: ToolEvent): Selected | undefined {
  const [only, another] = ctx.state.selection;
  const { tappedAt } = ctx.memory;
  ctx.memory.tappedAt = event.screen;
  const here = only && !another ? all.findIndex((a) => sameThing(a, only)) : -1;
  const again = tappedAt !== null && apart(tappedAt, event.screen) < 2 * SLOP_PX[event.kind];
  if (!again && !(here === 0 && only?.map === 'runs')) return all[0];
  return all[(here + 1) % Math.max(all.length, 1)];
}

/** Of several, what lies there and is chosen already is taken away, else the first of it is added: a leg where legs are chosen. */
function toggle(ctx: Ctx, all: readonly Selected[]): void {
  const { selection } = ctx.state;
  const chosen = all.find((a) => selection.some((s) => sameThing(s, a)));
  if (chosen) {
    ctx.select(selection.filter((s) => !sameThing(s, chosen)));
    return;
  }
  const [first] = all;
  const byLegs = first?.map === 'runs' && selection.some((s) => s.map === 'legs');
  const added = byLegs ? all.find((a) => a.map === 'legs') : first;
  if (added) ctx.select([...selection, added]);
}

/** Of several a pipe is chosen with its run; alone, a leg of the chosen run is still a leg that can be dragged by itself. */
function isChosen(ctx: Ctx, hit: Hit): boolean {
  const { selection } = ctx.state;
  const pipe = hit.map === 'legs' || hit.map === 'stretches' ? ctx.plan[hit.map][hit.id] : undefined;
  const run = pipe && selection.length > 1 ? pipe.run : undefined;
  return selection.some((s) => sameThing(s, hit) || (s.map === 'runs' && s.id === run));
}

/** What goes along: everything chosen where the dragged thing is part of it, else that thing alone. */
function along(ctx: Ctx, hit: Hit): readonly Selected[] {
  const { selection } = ctx.state;
  return selection.length > 1 && isChosen(ctx, hit) ? selection : [plain(hit)];
}

/** What no drag moves: it is changed by its form, or drawn anew. */
const FIXED: ReadonlySet<string> = new Set(['rooms', 'voids', 'stretches', 'roofs', 'grounds', 'blobRefs']);

/** What a press is about: a handle or what is chosen before what only lies on top. */
function grabbed(ctx: Ctx): Hit | undefined {
  const hits = ctx.memory.pressed?.hits ?? [];
  const chosen = hits.find((h) => h.end || h.corner !== undefined || isChosen(ctx, h));
  const fixed = (h: Hit): boolean => FIXED.has(h.map) && h.corner === undefined;
  return chosen && !fixed(chosen) ? chosen : hits.find((h) => !fixed(h));
}

function dragTo(ctx: Ctx, event: ToolEvent): void {
  const { memory } = ctx;
  const hit = grabbed(ctx);
  if (!hit || !memory.pressed) return;
  memory.drag = dragOf(ctx, hit, along(ctx, hit), memory.pressed.plane, event);
  if (!memory.drag) return;
  const shown = previewOf(ctx.plan, memory.drag);
  ctx.caught(shown.ok ? memory.drag.word : shown.why);
  ctx.draft(shown.ok ? { plan: shown.plan, moved: shown.touched } : null);
}

function panTo(ctx: Ctx, event: ToolEvent): void {
  const from = ctx.memory.panAt ?? event.screen;
  ctx.pan(event.screen[0] - from[0], event.screen[1] - from[1]);
  ctx.memory.panAt = event.screen;
}

function leave(ctx: Ctx): string {
  ctx.memory.pressed = null;
  ctx.memory.drag = null;
  ctx.memory.panAt = null;
  if (ctx.memory.asked) {
    ctx.memory.asked = null;
    ctx.typed('');
    ctx.ask(null);
  }
  ctx.draft(null);
  ctx.caught(null);
  return ctx.memory.several ? 'several' : 'idle';
}

/** A press: on a figure, on a thing, or on nothing. What was asked for is let go. */
function press(ctx: Ctx, event: ToolEvent): string {
  leave(ctx);
  const hits = event.hits();
  const figure = ctx.memory.several ? undefined : lateHand.is?.figureAt(ctx, event, hits);
  ctx.memory.pressed = { screen: event.screen, plane: event.plane, hits, figure };
  return 'pointing';
}

const corner = (from: Vec, to: Vec): Vec => [from[0], to[1]];

/** The box as it is drawn: what it takes is looked for when it is let go of. */
function boxTo(ctx: Ctx, event: ToolEvent): void {
  const { pressed } = ctx.memory;
  const { panes } = ctx.state;
  const plane = workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
  if (!pressed || !plane) return;
  const [from, to] = [pressed.plane, event.plane];
  const pts = [from, corner(from, to), to, corner(to, from), from].map((p) => plane.place(p, 0));
  ctx.draft({ lines: [{ pts, ink: 'accent', pen: 0.35 }] });
}

function takeBoxed(ctx: Ctx, event: ToolEvent): string {
  const { pressed } = ctx.memory;
  const hand = lateHand.is;
  if (pressed && hand) {
    const { selection } = ctx.state;
    const found = hand.boxed(ctx.state, hand.boxBetween(pressed.plane, event.plane));
    ctx.select([...selection, ...found.filter((f) => !selection.some((s) => sameThing(s, f)))]);
    ctx.candidates([]);
    ctx.memory.several = true;
  }
  return leave(ctx);
}

/** Chosen things are dragged; shift, or a drag of several over anything else, draws a box. */
const boxes = (ctx: Ctx, event: ToolEvent, hit: Hit | undefined): boolean =>
  lateHand.is !== null && (event.shift || (ctx.memory.several && !(hit && isChosen(ctx, hit))));

function askKey(ctx: Ctx, input: KeyInput): string | undefined {
  const { asked } = ctx.memory;
  const next = asked ? lateHand.is?.figureKey(ctx, asked, input) : null;
  if (next === undefined) return undefined;
  if (next === null) return leave(ctx);
  ctx.memory.asked = next;
  return 'asking';
}

const ARROWS: Readonly<Record<string, Vec>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
/** Up and down in height, whichever way the pane looks. */
const HEIGHTS: Readonly<Record<string, number>> = { PageUp: 1, PageDown: -1 };

/** 10, or with alt 1, with shift 100, with both 50. */
function stepMm({ shift, alt }: KeyInput): number {
  if (shift) return alt ? 50 : 100;
  return alt ? 1 : 10;
}

const MOVABLE = ['walls', 'points', 'runs', 'legs', 'nodes', 'items'];

/** Moved as it is seen: across and up the pane that was last touched, whichever way the house lies in it. */
function nudge(ctx: Ctx, input: KeyInput): boolean {
  const { panes, selection } = ctx.state;
  const [arrow, up] = [ARROWS[input.key], HEIGHTS[input.key]];
  const plane = workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
  const mm = stepMm(input);
  if (selection.length === 0 || !plane || (!arrow && up === undefined)) return false;
  const by = arrow ? wayInHouse(plane, [arrow[0] * mm, arrow[1] * mm]) : { x: 0, y: 0, z: (up ?? 0) * mm };
  const things = selection.filter((s) => MOVABLE.includes(s.map));
  if (things.length > 0) ctx.commit('things.move', { things, by });
  return true;
}

const resting = (ctx: Ctx): string => (ctx.memory.several ? 'several' : 'idle');

/** The key of the page that begins and ends choosing several. */
const SEVERAL = 'several';

function key(ctx: Ctx, input: KeyInput): string | undefined {
  const { selection } = ctx.state;
  if (input.key === SEVERAL || (input.key === 'Escape' && ctx.memory.several)) {
    ctx.memory.several = !ctx.memory.several;
    ctx.candidates([]);
    return resting(ctx);
  }
  if (nudge(ctx, input)) return resting(ctx);
  if ((input.key === 'Delete' || input.key === 'Backspace') && selection.length > 0) {
    ctx.commit('things.delete', { things: selection.map(plain) });
    return resting(ctx);
  }
  if (input.key !== 'Escape' || selection.length === 0) return undefined;
  ctx.select([]);
  ctx.candidates([]);
  return 'idle';
}

/** Chooses and moves. A drag over the empty floor moves the paper, so that one finger is enough to get about. */
export default defineTool<Memory>({
  id: 'select',
  label: 'Select',
  key: 's',
  order: 10,
  initial: 'idle',
  memory: () => ({ several: false, asked: null, pressed: null, drag: null, panAt: null, tappedAt: null }),
  states: {
    idle: { down: press, key, cancel: leave },
    several: { down: press, key, cancel: leave },
    pointing: {
      move(ctx, event) {
        const { pressed } = ctx.memory;
        if (!pressed || apart(event.screen, pressed.screen) < SLOP_PX[event.kind]) return;
        const hit = grabbed(ctx);
        if (boxes(ctx, event, hit)) {
          boxTo(ctx, event);
          return 'boxing';
        }
        if (!hit) {
          ctx.memory.panAt = pressed.screen;
          panTo(ctx, event);
          return 'panning';
        }
        dragTo(ctx, event);
        return 'dragging';
      },
      up(ctx, event) {
        const { pressed, several } = ctx.memory;
        const asked = pressed?.figure && !event.shift ? lateHand.is?.askFigure(ctx, pressed.figure) : undefined;
        if (asked) {
          ctx.memory.asked = asked;
          return 'asking';
        }
        const all = choices(ctx, pressed?.hits ?? []);
        if (event.shift || several) toggle(ctx, all);
        else {
          const chosen = next(ctx, all, event);
          ctx.select(chosen ? [chosen] : []);
        }
        ctx.candidates(all.length > 1 && !several ? all : []);
        return leave(ctx);
      },
      cancel: leave,
    },
    asking: { down: press, key: askKey, cancel: leave, changed: leave },
    boxing: { move: boxTo, up: takeBoxed, cancel: leave },
    dragging: {
      move: dragTo,
      up(ctx, event) {
        dragTo(ctx, event);
        const { drag } = ctx.memory;
        const hit = grabbed(ctx);
        if (drag && ctx.commit(drag.command, drag.args).ok && hit) {
          const taken = along(ctx, hit).filter((s) => s.id in ctx.plan[s.map]);
          if (!taken.some((t) => ctx.state.selection.some((s) => sameThing(s, t)))) ctx.select(taken);
        }
        return leave(ctx);
      },
      cancel: leave,
    },
    panning: {
      move: panTo,
      up: leave,
      cancel: leave,
    },
  },
});
