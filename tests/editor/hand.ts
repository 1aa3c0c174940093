import { createEditor } from '../../src/editor/create-editor.ts';
import type { Assumptions, Editor, PointerInput } from '../../src/editor/editor-api.ts';
import { toPixels } from '../../src/editor/input/camera.ts';
import { emptyPlan } from '../../src/plan/empty-plan.ts';
import { countingIds } from '../../src/plan/ids.ts';
import type { Plan } from '../../src/plan/plan.ts';

/** Invented figures: a test of the editor needs some, not the right ones. */
export const assumptions: Assumptions = {
  ceilingMm: 2400,
  buildUpMm: 250,
  inVoid: { mm: 2500, lo: 2450, hi: 2600 },
  boilerTail: { mm: 1100, lo: 900, hi: 1300 },
  meter: { mm: 500, lo: 300, hi: 900 },
  skirting: { mm: 50, lo: 30, hi: 100 },
  offFloorMm: 150,
  wallThicknessMm: 100,
  standOffMm: 25,
};

export const blank = (): Plan =>
  emptyPlan({ id: 'plan', name: 'test', storey: 'ground', option: 'A', ceilingMm: 2400, buildUpMm: 250 });

/** Ids that count on from the largest in a plan, so that two runs of a test give the same ones. */
export const idsFor = (plan: Plan) => {
  const taken = Object.values(plan).flatMap((map) => (typeof map === 'object' && map !== null ? Object.keys(map) : []));
  return countingIds(new Set(taken));
};

export function editorOf(plan: Plan = blank()): Editor {
  return createEditor({ plan, ids: idsFor(plan), assumptions });
}

export interface Hand {
  readonly editor: Editor;
  /** "down 100,200 move 300,200 up": places in mm of the plane, or as they were. */
  play(script: string): void;
  tap(x: number, y: number): void;
  readonly path: string[];
}

/** Plays pointer scripts on the active pane. 10 mm to a pixel unless the camera was moved. */
export function handOn(editor: Editor, pointerType: PointerInput['pointerType'] = 'mouse'): Hand {
  let at = [0, 0] as readonly [number, number];
  let time = 0;
  const path = [editor.store.getState().toolState];
  editor.store.subscribe((s) => {
    if (s.toolState !== path.at(-1)) path.push(s.toolState);
  });
  function send(type: PointerInput['type'], pointerId = 1): void {
    const { panes } = editor.store.getState();
    const pane = panes[panes.active] ?? panes.plan;
    const [x, y] = toPixels(pane, at);
    time += 600;
    const buttons = type === 'down' || type === 'move' ? 1 : 0;
    const mods = { shift: false, alt: false, ctrl: false };
    editor.pointer({ type, pointerId, pointerType, pane: panes.active, x, y, buttons, ...mods, time });
  }
  const hand: Hand = {
    editor,
    path,
    play(script) {
      const words = script.trim().split(/\s+/);
      words.forEach((word, i) => {
        const place = /^(-?\d+(?:\.\d+)?),(-?\d+(?:\.\d+)?)$/.exec(words[i + 1] ?? '');
        if (place) at = [Number(place[1]), Number(place[2])];
        if (word === 'down' || word === 'move' || word === 'up' || word === 'cancel') send(word);
        if (word === 'second') send('down', 2);
        if (word === 'lift') send('up', 2);
      });
    },
    tap(x, y) {
      hand.play(`down ${x},${y} up`);
    },
  };
  return hand;
}

export const press = (editor: Editor, ...keys: readonly string[]): void => {
  for (const key of keys) editor.key({ key, ctrl: false, shift: false, alt: false });
};
