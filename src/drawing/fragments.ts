import { type Alive, aliveIn } from '../network/cases.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Fragment, View } from './display-list.ts';
import { PAINTER_GROUPS } from './display-list.ts';
import { faceFragments } from './face/face-fragments.ts';
import { itemFragments } from './fragments/item-fragments.ts';
import { pipeFragments } from './fragments/pipe-fragments.ts';
import { planFragments } from './fragments/plan-fragments.ts';
import { pipesInView } from './pipes/pipes-in-view.ts';
import { facePlane, planPlane } from './pipes/plane.ts';

export interface FragmentOptions {
  /** After the work, show what it takes out. */
  readonly stripped?: boolean;
}

const RANK = new Map(PAINTER_GROUPS.map((group, i) => [group as string, i]));

/** Which records stand in a case, asked once for each plan. */
const lives = new WeakMap<Plan, Map<string, Alive>>();

export function livesOf(plan: Plan, chosen: Case): Alive {
  const key = `${chosen.option ?? ''}|${chosen.when}`;
  const of = lives.get(plan) ?? new Map<string, Alive>();
  lives.set(plan, of);
  const known = of.get(key) ?? aliveIn(plan, chosen);
  of.set(key, known);
  return known;
}

/**
 * The drawing of a view in a case, one fragment for each record, in painter's order. A record that did not change, and
 * leans on nothing that did, gives the very same fragment as before. Records without a place are left out.
 */
export function fragments(plan: Plan, view: View, chosen: Case, options: FragmentOptions = {}): readonly Fragment[] {
  const alive = livesOf(plan, chosen);
  const stripped = options.stripped ?? true;
  const face = view.kind === 'face' ? facePlane(plan, view.wall, view.side) : undefined;
  const plane = view.kind === 'plan' ? planPlane(view.storey) : face;
  if (!plane || !plan.storeys[plane.storey]) return [];
  const pipes = pipesInView(plan, plane, alive, stripped);
  const building = face
    ? faceFragments(plan, face, alive, stripped)
    : planFragments(plan, plane.storey, alive, stripped);
  const drawn = pipeFragments(plan, plane, pipes, alive);
  const items = itemFragments(plan, plane, pipes, alive, stripped, drawn.spreadAt);
  const all = [...building, ...drawn.fragments, ...items];
  const ranked = all.map((fragment, i) => ({ fragment, i, rank: RANK.get(fragment.layer) ?? 0 }));
  return ranked.sort((a, b) => a.rank - b.rank || a.i - b.i).map(({ fragment }) => fragment);
}
