import type { StoreApi } from 'zustand/vanilla';
import { countingIds, type IdMaker } from '../plan/ids.ts';
import type { Case, Plan } from '../plan/plan.ts';
import { commands } from './commands/commands.ts';
import { applySteps, isRefusal, runCommand, type Step } from './document.ts';
import type { Editor, EditorState, HistoryEntry, Outcome, Selected } from './editor-api.ts';
import { keptUnder } from './fold.ts';
import { type History, noHistory, record, stepBack, stepForward } from './history.ts';
import { later, loadLater } from './later/load-later.ts';
import { storeyOf } from './panes.ts';

type Listener = Parameters<Editor['onCommit']>[0];

/** Document and history: the only place where a plan is put in the store. */
export interface Session {
  run(command: string, args: unknown): Outcome;
  preview(command: string, args: unknown): Plan | null;
  undo(): Outcome;
  redo(): Outcome;
  onCommit(listener: Listener): () => void;
  restore(plan: Plan, undo: readonly HistoryEntry[], redo: readonly HistoryEntry[]): void;
  say(text: string, refusal: boolean): void;
}

const living = (plan: Plan, selection: readonly Selected[]): readonly Selected[] => {
  const left = selection.filter(({ map, id }) => id in plan[map]);
  return left.length === selection.length ? selection : left;
};

/** The case that is looked at, or, where its option is gone, that of the first there is; before the work where there is none. */
function livingCase(plan: Plan, chosen: Case): Case {
  if (chosen.option === null || plan.options[chosen.option]) return chosen;
  const option = Object.keys(plan.options)[0] ?? null;
  return { option, when: option === null ? 'before' : chosen.when };
}

/** The storey on which most eyes will look for the change: that of the first touched record that has one. */
function storeyOfStep(step: Step, before: Plan): string | null {
  for (const { path } of step.patches) {
    const [map, id] = [String(path[0]), String(path[1] ?? '')];
    for (const plan of [step.plan, before]) {
      const found = plan[map as 'walls' | 'points' | 'nodes' | 'legs']?.[id];
      const leg = found && 'a' in found && typeof found.a === 'string' ? plan.nodes[found.a] : undefined;
      const of = leg ?? found;
      if (of && 'storey' in of) return of.storey;
      const place = of && 'place' in of ? of.place : undefined;
      if (place && 'storey' in place) return place.storey;
      if (place && 'point' in place) return plan.points[place.point]?.storey ?? null;
    }
  }
  return null;
}

export function createSession(store: StoreApi<EditorState>, ids: IdMaker, changed: () => void): Session {
  let history: History = noHistory;
  const listeners = new Set<Listener>();

  const labels = () => ({ undo: history.undo.map((e) => e.label), redo: history.redo.map((e) => e.label) });

  function say(text: string, refusal: boolean): void {
    store.setState((s) => ({ said: { text, refusal, n: (s.said?.n ?? 0) + 1 } }));
  }
  function refused(why: string): Outcome {
    say(why, true);
    return { ok: false, why };
  }

  function put(plan: Plan, entry: HistoryEntry, kind: 'do' | 'undo' | 'redo', selection: readonly Selected[]): void {
    store.setState((s) => ({
      plan,
      chosen: livingCase(plan, s.chosen),
      revision: s.revision + 1,
      history: labels(),
      selection: living(plan, selection),
      panes: keptUnder(plan, s.panes),
      candidates: [],
      said: null,
    }));
    // One that is added by a listener hears of the next step, not of this one too.
    for (const listener of [...listeners]) listener(entry, kind, store.getState().revision);
    changed();
  }

  function walk(found: ReturnType<typeof stepBack>, kind: 'undo' | 'redo'): Outcome {
    const { plan, readOnly, panes } = store.getState();
    if (readOnly !== null) return refused(readOnly);
    if (!found) return refused(kind === 'undo' ? 'There is nothing to undo.' : 'There is nothing to redo.');
    const { entry } = found;
    history = found.history;
    const back = kind === 'undo';
    const selection = back ? entry.selectionBefore : (entry.selectionAfter ?? []);
    put(applySteps(plan, back ? entry.inverse : entry.patches), entry, kind, selection);
    const storey = entry.storey === null ? undefined : store.getState().plan.storeys[entry.storey];
    if (storey && storey.id !== storeyOf(panes))
      say(`${back ? 'Undid' : 'Redid'} "${entry.label}" on ${storey.name}.`, false);
    return { ok: true, made: [] };
  }

  return {
    say,
    run(id, args) {
      const { plan, chosen, readOnly, selection } = store.getState();
      if (readOnly !== null) return refused(readOnly);
      const command = commands.get(id);
      if (!command && !later.isHere) {
        void loadLater().catch(() => undefined);
        return refused('This part is still on its way. Try again in a moment.');
      }
      if (!command) throw new RangeError(`no command "${id}"`);
      const option = chosen.when === 'after' ? chosen.option : null;
      const step = runCommand(plan, command, args, { ids, chosen, option });
      if (isRefusal(step)) return refused(step.refused);
      if (step.patches.length === 0) return { ok: true, made: step.made };
      const { label, patches, inverse, made } = step;
      const selectionAfter = living(step.plan, selection);
      const entry: HistoryEntry = {
        label,
        patches,
        inverse,
        storey: storeyOfStep(step, plan),
        selectionBefore: selection,
        selectionAfter,
      };
      history = record(history, entry);
      put(step.plan, entry, 'do', selectionAfter);
      return { ok: true, made };
    },
    preview(id, args) {
      const { plan, chosen } = store.getState();
      const command = commands.get(id);
      if (!command && !later.isHere) return null;
      if (!command) throw new RangeError(`no command "${id}"`);
      const shown = countingIds();
      const own = { next: (prefix: string) => shown.next(`shown-${prefix}`) };
      const option = chosen.when === 'after' ? chosen.option : null;
      const step = runCommand(plan, command, args, { ids: own, chosen, option });
      return isRefusal(step) ? null : step.plan;
    },
    undo: () => walk(stepBack(history), 'undo'),
    redo: () => walk(stepForward(history), 'redo'),
    onCommit(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
    restore(plan, undo, redo) {
      history = { undo: [...undo], redo: [...redo] };
      store.setState((s) => ({
        plan,
        chosen: livingCase(plan, s.chosen),
        revision: s.revision + 1,
        history: labels(),
        selection: living(plan, s.selection),
        panes: keptUnder(plan, s.panes),
        candidates: [],
        draft: null,
        said: null,
      }));
      changed();
    },
  };
}
