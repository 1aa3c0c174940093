import type { Vec } from '../../drawing/display-list.ts';
import type { KeyInput, Selected } from '../editor-api.ts';
import type { Hit } from '../hit/hit-test.ts';
import { apart } from '../hit/shapes.ts';
import { SLOP_PX } from '../input/tolerance.ts';
import { wayInHouse, workPlane } from '../input/work-plane.ts';
import { defineTool, type ToolContext, type ToolEvent } from './define-tool.ts';
import { type Drag, dragOf, previewOf } from './drag.ts';

interface Memory {
  pressed: { readonly screen: Vec; readonly plane: Vec; readonly hits: readonly Hit[] } | null;
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

function toggle(ctx: Ctx, thing: Selected): void {
  const { selection } = ctx.state;
  const left = selection.filter((s) => !sameThing(s, thing));
  ctx.select(left.length < selection.length ? left : [...selection, thing]);
}

/** What goes along: everything chosen where the dragged thing is part of it, else that thing alone. */
function along(ctx: Ctx, hit: Hit): readonly Selected[] {
  const { selection } = ctx.state;
  return selection.length > 1 && selection.some((s) => sameThing(s, hit)) ? selection : [plain(hit)];
}

/** What no drag moves: it is changed by its form, or drawn anew. */
const FIXED: ReadonlySet<string> = new Set(['rooms', 'voids', 'stretches', 'roofs', 'grounds', 'blobRefs']);

/** What a press is about: a handle or what is chosen before what only lies on top. */
function grabbed(ctx: Ctx): Hit | undefined {
  const hits = ctx.memory.pressed?.hits ?? [];
  const chosen = hits.find((h) => h.end || h.corner !== undefined || ctx.state.selection.some((s) => sameThing(s, h)));
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
  ctx.draft(null);
  ctx.caught(null);
  return 'idle';
}

const ARROWS: Readonly<Record<string, Vec>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
const NUDGE_MM = { plain: 10, shift: 100, alt: 1 };

/** Moved as it is seen: across and up the pane that was last touched, whichever way the house lies in it. */
function nudge(ctx: Ctx, [x, y]: Vec, key: KeyInput): void {
  const { panes, selection } = ctx.state;
  const plane = workPlane(ctx.plan, (panes[panes.active] ?? panes.plan).view);
  const mm = key.shift ? NUDGE_MM.shift : key.alt ? NUDGE_MM.alt : NUDGE_MM.plain;
  const movable = ['walls', 'points', 'runs', 'legs', 'nodes', 'items'];
  const things = selection.filter((s) => movable.includes(s.map));
  if (!plane || things.length === 0) return;
  ctx.commit('things.move', { things, by: wayInHouse(plane, [x * mm, y * mm]) });
}

function key(ctx: Ctx, input: KeyInput): string | undefined {
  const { selection } = ctx.state;
  const arrow = ARROWS[input.key];
  if (arrow && selection.length > 0) {
    nudge(ctx, arrow, input);
    return 'idle';
  }
  if ((input.key === 'Delete' || input.key === 'Backspace') && selection.length > 0) {
    ctx.commit('things.delete', { things: selection.map(plain) });
    return 'idle';
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
  memory: () => ({ pressed: null, drag: null, panAt: null, tappedAt: null }),
  states: {
    idle: {
      down(ctx, event) {
        ctx.memory.pressed = { screen: event.screen, plane: event.plane, hits: event.hits() };
        return 'pointing';
      },
      key,
      cancel: leave,
    },
    pointing: {
      move(ctx, event) {
        const { pressed } = ctx.memory;
        if (!pressed || apart(event.screen, pressed.screen) < SLOP_PX[event.kind]) return;
        if (!grabbed(ctx)) {
          ctx.memory.panAt = pressed.screen;
          panTo(ctx, event);
          return 'panning';
        }
        dragTo(ctx, event);
        return 'dragging';
      },
      up(ctx, event) {
        const all = choices(ctx, ctx.memory.pressed?.hits ?? []);
        const [first] = all;
        const chosen = next(ctx, all, event);
        if (event.shift && first) toggle(ctx, first);
        else ctx.select(chosen ? [chosen] : []);
        ctx.candidates(all.length > 1 ? all : []);
        return leave(ctx);
      },
      cancel: leave,
    },
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
