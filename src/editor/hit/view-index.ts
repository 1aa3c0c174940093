import RBush from 'rbush';
import type { Box, View } from '../../drawing/display-list.ts';
import { aliveIn } from '../../network/cases.ts';
import { incidence } from '../../network/displace/incidence.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import { type WorkPlane, workPlane } from '../input/work-plane.ts';
import { entriesOf } from './entries.ts';
import { type Entry, gather, PIPEWORK, pipeworkEntry } from './pipework-entries.ts';

/** Box index of what shows in one view. `visited` counts the records handed out since it was made. */
export interface ViewIndex {
  readonly plane: WorkPlane;
  readonly box: Box | null;
  readonly visited: () => number;
  near(box: Box): readonly Entry[];
}

interface Built {
  readonly plan: Plan;
  readonly index: ViewIndex;
  readonly tree: RBush<Entry>;
  /** Entries of the pipework by id; ids of connections are no ids of the plan. */
  readonly byId: Map<string, Entry>;
}

const indexOf = (plane: WorkPlane, tree: RBush<Entry>): ViewIndex => {
  let visited = 0;
  return {
    plane,
    get box() {
      const { minX, minY, maxX, maxY, children } = tree.toJSON() as Box & { readonly children: readonly unknown[] };
      return children.length === 0 ? null : { minX, minY, maxX, maxY };
    },
    visited: () => visited,
    near(around) {
      const found = tree.search(around);
      visited += found.length;
      return found;
    },
  };
};

const isPipework = (e: Entry): boolean =>
  e.kind === 'node' || e.kind === 'leg' || e.kind === 'stretch' || e.kind === 'item';

function build(plan: Plan, view: View, chosen: Case): Built | undefined {
  const plane = workPlane(plan, view);
  if (!plane) return undefined;
  const entries = [...entriesOf(gather(plan, view, plane, aliveIn(plan, chosen)))];
  const tree = new RBush<Entry>().load(entries);
  return { plan, tree, index: indexOf(plane, tree), byId: new Map(entries.filter(isPipework).map((e) => [e.id, e])) };
}

/** What a change of these may move or hide without the pipe's own records changing: then all is built anew. */
const GROUND = [
  'storeys',
  'rooms',
  'voids',
  'points',
  'walls',
  'openings',
  'options',
  'roofs',
  'grounds',
  'blobRefs',
] as const;
/** More changes than this and building anew is no slower. */
const MOST_CHANGES = 400;

/** Pipework that may lie or stand otherwise: what changed, what is joined to it before and after, and what hangs on that. */
function changedPipework(before: Plan, after: Plan): Set<string> {
  const changed = new Set<string>();
  for (const map of [...PIPEWORK, 'runs'] as const) {
    if (before[map] === after[map]) continue;
    for (const [id, record] of Object.entries(after[map])) if (before[map][id] !== record) changed.add(id);
    for (const id of Object.keys(before[map])) if (!(id in after[map])) changed.add(id);
  }
  const runs = [...changed].filter((id) => before.runs[id] || after.runs[id]);
  if (runs.length > 0) {
    for (const plan of [before, after]) {
      for (const map of ['legs', 'stretches'] as const) {
        for (const pipe of Object.values(plan[map])) if (changed.has(pipe.run)) changed.add(pipe.id);
      }
    }
  }
  for (const plan of [before, after]) {
    const at = incidence(plan);
    for (const id of [...changed]) {
      const pipe = plan.legs[id] ?? plan.stretches[id];
      if (pipe) changed.add(pipe.a).add(pipe.b);
    }
    for (const id of [...changed]) {
      for (const r of [...at.legsAt(id), ...at.stretchesAt(id), ...at.itemsAt(id)]) changed.add(r.id);
    }
  }
  return changed;
}

/** Takes the tree of the plan before over for the plan after it; undefined where that would not pay or not be right. */
function carriedOn(was: Built, plan: Plan, view: View, chosen: Case): Built | undefined {
  if (GROUND.some((map) => was.plan[map] !== plan[map])) return undefined;
  const changed = changedPipework(was.plan, plan);
  if (changed.size > MOST_CHANGES) return undefined;
  const { tree, byId, index } = was;
  const g = gather(plan, view, index.plane, aliveIn(plan, chosen));
  for (const id of changed) {
    const old = byId.get(id);
    if (old) tree.remove(old);
    byId.delete(id);
    const map = PIPEWORK.find((m) => plan[m][id]);
    const made = map && pipeworkEntry(g, map, id);
    if (!made) continue;
    tree.insert(made);
    byId.set(id, made);
  }
  return { plan, tree, byId, index: indexOf(index.plane, tree) };
}

/** The last few views that were asked for. An index is of one plan only: a later plan takes its tree over. */
const kept = new Map<string, Built>();
const MOST_KEPT = 6;

/** The index of a view. Kept until another plan is asked about; then only what changed is put right. */
export function viewIndex(plan: Plan, view: View, chosen: Case): ViewIndex | undefined {
  const looked = view.kind === 'plan' ? `${view.storey}/${view.turnDeg ?? 0}` : `${view.wall}/${view.side}`;
  const key = `${view.kind}:${looked}:${chosen.when}:${chosen.option ?? ''}`;
  const was = kept.get(key);
  if (was?.plan === plan) return was.index;
  const made = (was && carriedOn(was, plan, view, chosen)) ?? build(plan, view, chosen);
  kept.delete(key);
  if (!made) return undefined;
  kept.set(key, made);
  for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
  return made.index;
}

export const around = ([x, y]: readonly [number, number], by: number): Box => ({
  minX: x - by,
  minY: y - by,
  maxX: x + by,
  maxY: y + by,
});
