import type { Vec } from '../../drawing/display-list.ts';
import type { HeightRef } from '../../plan/records/parts.ts';
import type { EditorState, KeyInput, Pane, PointerInput } from '../editor-api.ts';
import { viewIndex } from '../hit/view-index.ts';
import { toPixels } from '../input/camera.ts';
import { type WorkPlane, workPlane } from '../input/work-plane.ts';
import { sameValue } from '../same-value.ts';
import type { Cursor, CursorPorts, CursorState } from './cursor-api.ts';
import { nextCatch } from './next-catch.ts';

const ARROWS: Readonly<Record<string, Vec>> = {
  ArrowLeft: [-1, 0],
  ArrowRight: [1, 0],
  ArrowUp: [0, 1],
  ArrowDown: [0, -1],
};
/** Shift goes one up the ladder, alt one down. */
const STEPS_MM = [1, 10, 100, 500, 1000];
const USUAL_MM = 100;
const ROUND_MM = 10;
/** The paper follows when the cross comes so near to the edge. */
const EDGE_PX = 72;
const EDGE_SHARE = 0.2;
const POINTER = -1;
/** Two taps of a key are never one double tap, however fast they come. */
const BETWEEN_TAPS_MS = 1000;

interface Here {
  readonly name: CursorState['pane'];
  readonly pane: Pane;
  readonly plane: WorkPlane;
}

/** A tenth of a mm, as lengths are kept. */
const kept = (mm: number): number => Math.round(mm * 10) / 10;
const round = (mm: number): number => Math.round(mm / ROUND_MM) * ROUND_MM;

/** Arrows that the tool has said it takes for itself. */
const asksArrows = ({ ask }: EditorState): boolean =>
  ask?.rows.some((row) => row.some((k) => k.key in ARROWS)) ?? false;

/** Where the line that is being drawn starts, in the plane. */
function lineFrom({ draft }: EditorState, { plane, name }: Here): Vec | undefined {
  const from = draft?.pane === name ? draft.lines.at(-1)?.pts[0] : undefined;
  return from && plane.onto(from);
}

export function createCursor(ports: CursorPorts): Cursor {
  const { get } = ports;
  let taps = 0;
  /** Where it was last tapped and with which height in hand: Enter there again is meant for the tool. */
  let tapped: { readonly at: Vec; readonly tool: string; readonly height: HeightRef } | null = null;

  function here(): Here | undefined {
    const { panes, plan } = get();
    const pane = panes[panes.active];
    const plane = pane && workPlane(plan, pane.view);
    return pane && plane ? { name: panes.active, pane, plane } : undefined;
  }

  const shownIn = (at: Here): CursorState | null => {
    const { cursor } = get();
    return cursor?.pane === at.name ? cursor : null;
  };

  function put(at: Here, to: Vec, held = false): void {
    const now = get().cursor;
    const place: Vec = [kept(to[0]), kept(to[1])];
    ports.show({ stepMm: now?.stepMm ?? USUAL_MM, held, pane: at.name, at: place, n: (now?.n ?? 0) + 1 });
    follow(at, place);
  }

  function follow({ name }: Here, to: Vec): void {
    const pane = get().panes[name];
    if (!pane) return;
    const [x, y] = toPixels(pane, to);
    const over = (p: number, size: number): number => {
      const edge = Math.min(EDGE_PX, size * EDGE_SHARE);
      return Math.max(0, edge - p) - Math.max(0, p - (size - edge));
    };
    const [dx, dy] = [over(x, pane.width), over(y, pane.height)];
    if (dx !== 0 || dy !== 0) ports.pan(name, dx, dy);
  }

  function feed(type: PointerInput['type'], { name }: Here, to: Vec, keys: Pick<KeyInput, 'shift' | 'alt'>): void {
    const pane = get().panes[name];
    if (!pane) return;
    const [x, y] = toPixels(pane, to);
    const buttons = type === 'down' || (type === 'move' && get().cursor?.held) ? 1 : 0;
    const time = performance.now() + taps * BETWEEN_TAPS_MS;
    ports.pointer({
      type,
      pointerId: POINTER,
      pointerType: 'mouse',
      pane: name,
      x,
      y,
      buttons,
      shift: keys.shift,
      alt: keys.alt,
      ctrl: false,
      time,
    });
  }

  const plain = { shift: false, alt: false };

  function move(at: Here, to: Vec, free = false): void {
    const held = get().cursor?.held ?? false;
    put(at, to, held);
    feed('move', at, to, { shift: false, alt: free });
  }

  function stepOf({ shift, alt }: KeyInput, { stepMm }: CursorState): number {
    const rung = STEPS_MM.indexOf(stepMm) + (shift ? 1 : 0) - (alt ? 1 : 0);
    return STEPS_MM[Math.min(Math.max(rung, 0), STEPS_MM.length - 1)] ?? USUAL_MM;
  }

  /** With figures typed an arrow tells which way they go, exactly. */
  function turn(at: Here, way: Vec): boolean {
    const { typed, tool } = get();
    const mm = Number(typed);
    const from = lineFrom(get(), at) ?? (tapped?.tool === tool ? tapped.at : undefined);
    if (typed === '' || !(mm > 0) || !from) return false;
    move(at, [from[0] + way[0] * mm, from[1] + way[1] * mm], true);
    return true;
  }

  function arrow(way: Vec, input: KeyInput): boolean {
    const state = get();
    const held = state.cursor?.held ?? false;
    const nudges = state.tool === 'select' && state.selection.length > 0 && !input.ctrl;
    const plainArrow = !input.ctrl && !input.shift && !input.alt;
    if (!held && (nudges || (plainArrow && asksArrows(state)))) return false;
    const at = here();
    if (!at) return false;
    const cursor = shownIn(at);
    if (!input.ctrl && turn(at, way)) return true;
    if (!cursor) {
      const [x, y] = at.pane.camera.centre;
      move(at, lineFrom(state, at) ?? [round(x), round(y)]);
      return true;
    }
    if (input.ctrl) {
      const index = viewIndex(state.plan, at.pane.view, state.chosen);
      const laying = state.tool === 'run' || state.tool === 'tee';
      const to = index && nextCatch(index, cursor.at, way, laying ? state.inHand.service : null);
      if (to) move(at, to);
      else ports.say('Nothing to catch that way.');
      return true;
    }
    const mm = stepOf(input, cursor);
    move(at, [cursor.at[0] + way[0] * mm, cursor.at[1] + way[1] * mm]);
    return true;
  }

  /** Where the tool would put it: what was caught, else where the cross is. */
  function aimedAt(at: Here, cursor: CursorState): Vec {
    const { draft } = get();
    const mark = draft?.pane === at.name ? draft.marks.findLast((m) => m.mark === 'aim') : undefined;
    return mark ? at.plane.onto(mark.at) : cursor.at;
  }

  function tap(at: Here, cursor: CursorState, input: KeyInput): void {
    taps += 1;
    feed('move', at, cursor.at, input);
    const to = aimedAt(at, cursor);
    feed('down', at, cursor.at, input);
    feed('up', at, cursor.at, input);
    settle(at, to);
  }

  function settle(at: Here, to: Vec): void {
    put(at, to);
    tapped = { at: get().cursor?.at ?? to, tool: get().tool, height: get().inHand.height };
  }

  function hold(at: Here, cursor: CursorState): void {
    taps += 1;
    feed('move', at, cursor.at, plain);
    feed('down', at, cursor.at, plain);
    put(at, cursor.at, true);
    ports.say('Held. Arrows drag it, Enter lets go, Escape gives up.');
  }

  const isTappedHere = (cursor: CursorState): boolean =>
    tapped !== null &&
    tapped.tool === get().tool &&
    sameValue(tapped.at, cursor.at) &&
    sameValue(tapped.height, get().inHand.height);

  /** Figures that are typed are the tool's, and the cross goes where they lead. */
  function typedEnd(at: Here, cursor: CursorState, input: KeyInput): boolean {
    const to = aimedAt(at, cursor);
    if (!ports.toolKey(input)) return false;
    settle(at, to);
    return true;
  }

  function press(input: KeyInput): boolean {
    const at = here();
    const cursor = at && shownIn(at);
    if (!at || !cursor) {
      if (input.key === 'Enter' || !at || input.ctrl) return false;
      const [x, y] = at.pane.camera.centre;
      move(at, [round(x), round(y)]);
      return true;
    }
    if (cursor.held) {
      feed('up', at, cursor.at, plain);
      settle(at, cursor.at);
      return true;
    }
    if (input.ctrl) {
      hold(at, cursor);
      return true;
    }
    if (input.key === 'Enter') {
      if (get().typed !== '') return typedEnd(at, cursor, input);
      if (isTappedHere(cursor) && !input.alt && !input.shift && ports.toolKey(input)) return true;
    }
    tap(at, cursor, input);
    return true;
  }

  function giveUp(input: KeyInput): boolean {
    const { cursor } = get();
    if (cursor?.held) {
      ports.cancel();
      ports.show({ ...cursor, held: false, n: cursor.n + 1 });
      return true;
    }
    tapped = null;
    if (ports.toolKey(input)) return true;
    if (!cursor) return false;
    ports.cancel();
    ports.show(null);
    return true;
  }

  return {
    key(input) {
      const way = ARROWS[input.key];
      if (way) return arrow(way, input);
      if (input.key === 'Enter' || input.key === ' ') return press(input);
      return input.key === 'Escape' && giveUp(input);
    },
    goTo(place) {
      const at = here();
      if (at) move(at, at.plane.onto(place));
    },
    step(by) {
      const at = here();
      const cursor = at && shownIn(at);
      const now = cursor?.stepMm ?? USUAL_MM;
      const to = STEPS_MM[Math.min(Math.max(STEPS_MM.indexOf(now) + by, 0), STEPS_MM.length - 1)] ?? USUAL_MM;
      if (cursor) ports.show({ ...cursor, stepMm: to });
      ports.say(cursor ? `Step ${to}.` : 'The step is that of the cross: an arrow on the drawing shows it.');
    },
  };
}
