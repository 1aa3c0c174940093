import { applyPatches, enablePatches, type Patch, produceWithPatches } from 'immer';
import type { Edited } from '../../src/files/store/autosave.ts';
import type { StepEntry, StepKind } from '../../src/files/store/store-port.ts';
import type { Plan } from '../../src/plan/plan.ts';

enablePatches();

/** A document with steps back and forth, as the editor has one, and nothing else of it. */
export function editedPlan(from: Plan, undo: readonly StepEntry[] = [], redo: readonly StepEntry[] = []) {
  let plan = from;
  let back = [...undo];
  let forth = [...redo];
  let revision = 0;
  const listeners = new Set<(entry: StepEntry, kind: StepKind, revision: number) => void>();
  const tell = (entry: StepEntry, kind: StepKind): void => {
    revision += 1;
    for (const listener of listeners) listener(entry, kind, revision);
  };
  const edited: Edited<StepEntry> = {
    plan: () => plan,
    onCommit(listener) {
      listeners.add(listener);
      return () => listeners.delete(listener);
    },
  };
  return {
    edited,
    plan: () => plan,
    undoLabels: () => back.map((e) => e.label),
    redoLabels: () => forth.map((e) => e.label),
    change(label: string, recipe: (draft: Plan) => void) {
      const [next, patches, inverse] = produceWithPatches(plan, recipe);
      plan = next;
      const entry = { label, patches, inverse };
      back.push(entry);
      forth = [];
      tell(entry, 'do');
    },
    undo() {
      const entry = back.pop();
      if (!entry) return;
      plan = applyPatches(plan, entry.inverse as Patch[]);
      forth.push(entry);
      tell(entry, 'undo');
    },
    redo() {
      const entry = forth.pop();
      if (!entry) return;
      plan = applyPatches(plan, entry.patches as Patch[]);
      back = [...back, entry];
      tell(entry, 'redo');
    },
  };
}
