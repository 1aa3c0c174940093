import { createStore } from 'zustand/vanilla';
import type { IdMaker } from '../plan/ids.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Cursor } from './cursor/cursor-api.ts';
import type { Assumptions, Editor, EditorState, PenUse } from './editor-api.ts';
import { firstStorey } from './first-storey.ts';
import { alignedTo, foldedDown, foldedUp } from './fold.ts';
import { onStorey, pipeOf, startInHand } from './in-hand.ts';
import { createArbiter } from './input/arbiter.ts';
import { fitted, panned, toPixels, wheelFactor, zoomed } from './input/camera.ts';
import { fitBox, marginsOf } from './input/fit-box.ts';
import { workPlane } from './input/work-plane.ts';
import { defaultKeys, type KeyBinding, pressKey } from './keys.ts';
import { later, loadLater } from './later/load-later.ts';
import { planView, startPanes, storeyOf, turnOf, withPane } from './panes.ts';
import { createSession } from './session.ts';
import { createToolRunner } from './tool-runner.ts';
import { LATER_TOOLS } from './tools/later-tools.ts';

export interface EditorSetup {
  readonly plan: Plan;
  readonly ids: IdMaker;
  readonly assumptions: Assumptions;
}

const FIRST_TOOL = 'select';

function startState({ plan, assumptions }: EditorSetup): EditorState {
  const option = Object.keys(plan.options)[0] ?? null;
  const chosen: Case = { option, when: option === null ? 'before' : 'after' };
  const storey = firstStorey(plan, chosen);
  return {
    plan,
    revision: 0,
    chosen,
    history: { undo: [], redo: [] },
    readOnly: null,
    tool: FIRST_TOOL,
    toolState: '',
    draft: null,
    selection: [],
    candidates: [],
    panes: startPanes(storey),
    figures: {},
    inHand: startInHand(storey, assumptions),
    caught: null,
    typed: '',
    ask: null,
    cursor: null,
    said: null,
  };
}

/** A whole editor with no page about it: documents, history, tools and cameras. Every plan given to it is left as it is. */
export function createEditor(setup: EditorSetup): Editor {
  const store = createStore<EditorState>()(() => startState(setup));
  const get = store.getState;
  let gloves = false;
  let keys: { readonly all: readonly KeyBinding[]; readonly signs: boolean } | null = null;
  let pen: PenUse = 'auto';

  const session = createSession(store, setup.ids, () => runner.changed());
  const select: Editor['select'] = (what) => store.setState({ selection: what });
  const setInHand: Editor['setInHand'] = (change) => {
    const service =
      change.service !== undefined && change.service !== get().inHand.service ? pipeOf(change.service) : {};
    store.setState((s) => ({ inHand: { ...s.inHand, ...service, ...change } }));
    runner.changed();
  };
  const setTool: Editor['setTool'] = (tool) => {
    if (runner.take(tool)) return;
    if (!LATER_TOOLS.some((t) => t.id === tool)) throw new RangeError(`no tool "${tool}"`);
    loadLater().then(
      () => runner.take(tool),
      () => session.say('This tool could not be fetched. It comes with the next start that has a network.', true),
    );
  };
  const runner = createToolRunner({
    store,
    doors: { run: session.run, undo: session.undo, select, setInHand, setTool },
    assumptions: setup.assumptions,
    gloves: () => gloves,
    pan: (dx, dy) => panBy(get().panes.active, dx, dy),
    say: session.say,
  });
  const moveCamera = (which: 'plan' | 'face', camera: EditorState['panes']['plan']['camera']): void =>
    store.setState((s) => {
      const panes = withPane(s.panes, which, (pane) => ({ ...pane, camera }));
      return { panes: alignedTo(s.plan, panes, which) };
    });
  const panBy = (which: 'plan' | 'face', dx: number, dy: number): void => {
    const pane = get().panes[which];
    if (pane) moveCamera(which, panned(pane.camera, dx, dy));
  };
  const arbiter = createArbiter(
    {
      tool: runner.pointer,
      interrupt: runner.interrupt,
      pan: panBy,
      pinch(which, [x, y], factor) {
        const pane = get().panes[which];
        if (pane) moveCamera(which, zoomed(pane, x, y, factor));
      },
    },
    () => ({ pen, gloves }),
  );

  const signsCount = (): boolean => keys?.signs ?? true;
  let cursor: Cursor | null = null;
  const cursorOf = (): Cursor | null => {
    cursor ??=
      later.makeCursor?.({
        get,
        show: (shown) => store.setState({ cursor: shown }),
        pointer: arbiter.pointer,
        pan: panBy,
        toolKey: runner.key,
        cancel: () => editor.cancel(),
        say: (text) => session.say(text, false),
      }) ?? null;
    return cursor;
  };

  const editor: Editor = {
    store,
    assumptions: setup.assumptions,
    run: session.run,
    preview: session.preview,
    showDraft: (draft) => store.setState({ draft }),
    undo: session.undo,
    redo: session.redo,
    select,
    setTool,
    setInHand,
    setCase(chosen) {
      runner.cancel();
      store.setState({ chosen, candidates: [] });
    },
    setStorey(storey) {
      if (!get().plan.storeys[storey]) throw new RangeError(`no storey "${storey}"`);
      runner.cancel();
      store.setState((s) => ({
        panes: withPane(s.panes, 'plan', (pane) => ({ ...pane, view: planView(storey, turnOf(s.panes)) })),
        inHand: onStorey(s.inHand, s.plan, storey),
        candidates: [],
      }));
    },
    foldUp(face) {
      runner.cancel();
      store.setState((s) => ({
        panes: face ? foldedUp(s.plan, s.panes, face.wall, face.side) : foldedDown(s.panes),
      }));
    },
    setActivePane(active) {
      if (get().panes[active]) store.setState((s) => ({ panes: { ...s.panes, active } }));
    },
    resizePane(which, width, height) {
      store.setState((s) => ({ panes: withPane(s.panes, which, (pane) => ({ ...pane, width, height })) }));
    },
    placeFigures(which, figures) {
      store.setState((s) => ({ figures: { ...s.figures, [which]: figures } }));
    },
    setCamera: moveCamera,
    zoomToFit() {
      const { panes } = get();
      const pane = panes[panes.active] ?? panes.plan;
      moveCamera(panes.active, fitted(pane, fitBox(get().plan, pane.view), marginsOf(pane)));
    },
    showPlace(at, storey) {
      if (storey !== storeyOf(get().panes)) editor.setStorey(storey);
      const { camera, view } = get().panes.plan;
      moveCamera('plan', { ...camera, centre: workPlane(get().plan, view)?.onto(at) ?? [at.x, at.y] });
    },
    pointer(e) {
      // Who takes a pointer is led by it: the cross would only be in the way.
      if (get().cursor !== null) store.setState({ cursor: null });
      arbiter.pointer(e);
    },
    wheel(e) {
      const pane = get().panes[e.pane];
      if (!pane) return;
      if (e.pixelMode && !e.ctrl) moveCamera(e.pane, panned(pane.camera, -e.deltaX, -e.deltaY));
      else moveCamera(e.pane, zoomed(pane, e.x, e.y, wheelFactor(e.deltaY, e.ctrl)));
    },
    pointAt: (at) => cursorOf()?.goTo(at),
    key(input) {
      if (input.drawing && !input.typing && cursorOf()?.key(input)) return true;
      const forTool = !input.typing && !input.ctrl && (input.drawing || signsCount() || input.key.length > 1);
      if (forTool && runner.key(input)) return true;
      return pressKey(editor, keys?.all ?? defaultKeys(), input, {
        zoom(by) {
          const { panes, cursor } = get();
          const pane = panes[panes.active] ?? panes.plan;
          const [x, y] = cursor?.pane === panes.active ? toPixels(pane, cursor.at) : [pane.width / 2, pane.height / 2];
          moveCamera(panes.active, zoomed(pane, x, y, by));
        },
        step: (by) => cursorOf()?.step(by),
      });
    },
    cancel() {
      arbiter.reset();
      runner.cancel();
    },
    holdToPan: arbiter.holdToPan,
    setGloves(on) {
      gloves = on;
    },
    setKeys(all, signs) {
      keys = { all, signs };
    },
    setPenUse(use) {
      pen = use;
    },
    gesture: arbiter.state,
    blur() {
      arbiter.holdToPan(false);
      arbiter.reset();
    },
    setReadOnly(readOnly) {
      if (readOnly !== null) runner.cancel();
      store.setState({ readOnly });
    },
    onCommit: session.onCommit,
    restore(plan, undo, redo) {
      runner.cancel();
      session.restore(plan, undo, redo);
    },
  };
  return editor;
}
