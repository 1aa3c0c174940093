import type { StoreApi } from 'zustand/vanilla';
import { resolveHeight } from '../geometry/heights.ts';
import type { Assumptions, Draft, Editor, EditorState, KeyInput, Outcome, PointerInput } from './editor-api.ts';
import { handlesOf } from './hit/handles.ts';
import { type Handle, hitTest } from './hit/hit-test.ts';
import { viewIndex } from './hit/view-index.ts';
import { toPlane } from './input/camera.ts';
import { pointerKind, TOLERANCE_PX } from './input/tolerance.ts';
import { sameValue } from './same-value.ts';
import type { SnapOptions } from './snap/define-snap.ts';
import { snapTo } from './snap/snap.ts';
import { type Chart, runChart } from './tools/chart.ts';
import type { ToolContext, ToolEvent } from './tools/define-tool.ts';
import { tools } from './tools/tools.ts';

type Doors = Pick<Editor, 'run' | 'undo' | 'select' | 'setInHand' | 'setTool'>;

export interface RunnerSetup {
  readonly store: StoreApi<EditorState>;
  readonly doors: Doors;
  readonly assumptions: Assumptions;
  readonly gloves: () => boolean;
  readonly pan: (dx: number, dy: number) => void;
  readonly say: (text: string, refusal: boolean) => void;
}

export interface ToolRunner {
  pointer(event: PointerInput): void;
  key(key: KeyInput): boolean;
  cancel(): void;
  interrupt(): void;
  changed(): void;
  /** False where there is no such tool. */
  take(tool: string): boolean;
  readonly path: () => readonly string[];
}

const BLANK: Omit<Draft, 'pane'> = { lines: [], marks: [], labels: [], moved: new Set(), plan: null };

/** All that a tool may write besides the plan. */
const written = ({ draft, caught, typed, ask, inHand, selection, candidates }: EditorState): Partial<EditorState> => ({
  draft,
  caught,
  typed,
  ask,
  inHand,
  selection,
  candidates,
});

/** Runs the tool in hand: gives it events and the one door it may write through, and holds it to one step a gesture. */
export function createToolRunner(setup: RunnerSetup): ToolRunner {
  const { store, doors } = setup;
  let busy = false;
  let commits = 0;
  /** As everything stood before the pointer went down. */
  let before: { readonly chart: Chart; readonly state: EditorState; readonly putBack: () => void } | null = null;

  const context = (memory: unknown, may: { commit: boolean }): ToolContext<unknown> => {
    const state = store.getState();
    return {
      memory,
      get plan() {
        return store.getState().plan;
      },
      get state() {
        return store.getState();
      },
      get inHand() {
        return store.getState().inHand;
      },
      mmPerPx: (state.panes[state.panes.active] ?? state.panes.plan).camera.mmPerPx,
      assumptions: setup.assumptions,
      draft: (draft) =>
        store.setState({ draft: draft === null ? null : { ...BLANK, pane: store.getState().panes.active, ...draft } }),
      caught: (caught) => store.setState({ caught }),
      typed: (typed) => store.setState({ typed }),
      ask: (ask) => {
        if (!sameValue(ask, store.getState().ask)) store.setState({ ask });
      },
      commit(command, args): Outcome {
        if (!may.commit) throw new Error(`"${command}" was committed where nothing may be`);
        if (commits > 0) throw new Error(`"${command}" is a second step in one gesture`);
        const outcome = doors.run(command, args);
        if (outcome.ok) commits++;
        return outcome;
      },
      undo: doors.undo,
      select: doors.select,
      candidates: (candidates) => store.setState({ candidates }),
      setInHand: doors.setInHand,
      setTool: doors.setTool,
      pan: setup.pan,
      say: (text, refusal = false) => setup.say(text, refusal),
    };
  };

  const start = (id: string): Chart | undefined => {
    const tool = tools.get(id);
    return tool && runChart(tool, { context, onState: (toolState) => store.setState({ toolState }) });
  };
  const first = start(store.getState().tool);
  if (!first) throw new Error(`no tool "${store.getState().tool}"`);
  let chart: Chart = first;
  store.setState({ toolState: chart.state() });

  /** What the plan does meanwhile is the tool's own doing, so it is not told of it. */
  function within<T>(work: () => T): T {
    const outer = busy;
    busy = true;
    try {
      return work();
    } finally {
      busy = outer;
    }
  }

  function toolEvent(e: PointerInput): ToolEvent {
    const state = store.getState();
    const pane = state.panes[e.pane] ?? state.panes.plan;
    const kind = pointerKind(e.pointerType, setup.gloves());
    const at = toPlane(pane, e.x, e.y);
    const toleranceMm = TOLERANCE_PX[kind] * pane.camera.mmPerPx;
    const index = viewIndex(state.plan, pane.view, state.chosen);
    const depthInHand = (options?: SnapOptions): number =>
      options?.depth ??
      (pane.view.kind === 'face'
        ? setup.assumptions.standOffMm
        : (resolveHeight(state.plan, state.inHand.height)?.z ?? 0));
    const free = (options?: SnapOptions) => {
      const depth = depthInHand(options);
      const fixed = pane.view.kind === 'face' ? 'sz' : 'xy';
      const place = index?.plane.place(at, depth) ?? { x: at[0], y: at[1], z: depth };
      return { at: place, fixed, source: 'free', word: null, target: null } as const;
    };
    const { x, y } = index?.plane.place(at, 0) ?? { x: at[0], y: at[1] };
    const handles = (): readonly Handle[] => (index ? handlesOf(state.plan, index.plane, state.selection) : []);
    return {
      screen: [e.x, e.y],
      plane: at,
      floor: { x, y },
      pane: e.pane,
      kind,
      shift: e.shift,
      alt: e.alt,
      ctrl: e.ctrl,
      time: e.time,
      pressed: e.buttons !== 0 || e.type === 'down',
      raw: free,
      snap: (options = {}) =>
        index && !e.alt ? snapTo(state.plan, index, at, toleranceMm, depthInHand(options), options) : free(options),
      hits: () => (index ? hitTest(index, at, toleranceMm, handles()) : []),
    };
  }

  return {
    pointer(e) {
      if (e.type === 'cancel') return;
      if (e.type === 'down') {
        commits = 0;
        before = { chart, state: store.getState(), putBack: chart.keep() };
        if (store.getState().panes.active !== e.pane && store.getState().panes[e.pane]) {
          store.setState((s) => ({ panes: { ...s.panes, active: e.pane } }));
        }
      }
      within(() => chart.on(e.type as 'down' | 'move' | 'up', toolEvent(e)));
      if (e.type === 'up') before = null;
    },
    key(key) {
      commits = 0;
      return within(() => chart.key(key));
    },
    cancel: () => within(() => chart.cancel()),
    interrupt() {
      const was = before;
      before = null;
      const asItWas = was !== null && was.chart === chart && was.state.plan === store.getState().plan;
      within(() => {
        if (!asItWas) chart.interrupt();
        else {
          was.putBack();
          store.setState(written(was.state));
        }
      });
    },
    changed() {
      if (!busy) within(() => chart.changed());
    },
    take(id) {
      const next = start(id);
      if (!next) return false;
      within(() => chart.leave());
      chart = next;
      store.setState({
        tool: id,
        toolState: chart.state(),
        draft: null,
        caught: null,
        typed: '',
        ask: null,
        candidates: [],
      });
      return true;
    },
    path: () => chart.path(),
  };
}
