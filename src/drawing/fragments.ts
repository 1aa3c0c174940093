import { type Alive, aliveIn } from '../network/cases.ts';
import type { Case, Plan } from '../plan/plan.ts';
import type { Box, Fragment, View } from './display-list.ts';
import { drawAgain, type KeptDrawing } from './fragments/kept-drawing.ts';
import type { DrawnLeg } from './pipes/drawn-leg.ts';
import { planeOf, viewKey } from './pipes/plane.ts';

const NOTHING: readonly Fragment[] = [];

export interface FragmentOptions {
  /** After the work, show what it takes out. */
  readonly stripped?: boolean;
}

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

/** The drawings that were asked for last: each goes on from plan to plan. */
const kept = new Map<string, KeptDrawing>();
const MOST_KEPT = 6;

function keptDrawing(plan: Plan, view: View, chosen: Case, stripped: boolean): KeptDrawing | undefined {
  const key = `${viewKey(view)}|${chosen.option ?? ''}|${chosen.when}|${stripped}`;
  const was = kept.get(key);
  if (was?.plan === plan) return was;
  const plane = planeOf(plan, view);
  kept.delete(key);
  if (!plane || !plan.storeys[plane.storey]) return undefined;
  const now = drawAgain(was, plan, { plane, alive: livesOf(plan, chosen), stripped });
  kept.set(key, now);
  for (const old of [...kept.keys()].slice(0, -MOST_KEPT)) kept.delete(old);
  return now;
}

/**
 * The drawing of a view in a case, one fragment for each record, in painter's order. A record that did not change, and
 * leans on nothing that did, gives the very same fragment as before; where nothing that is drawn changed, the very same
 * list. Only pipes near what changed are looked at. Records without a place are left out.
 */
export function fragments(plan: Plan, view: View, chosen: Case, options: FragmentOptions = {}): readonly Fragment[] {
  return keptDrawing(plan, view, chosen, options.stripped ?? true)?.fragments ?? NOTHING;
}

/** Drawn pipes of a view that come within reach of a box of its plane. */
export function pipesNear(plan: Plan, view: View, chosen: Case, box: Box, reachMm: number): readonly DrawnLeg[] {
  return keptDrawing(plan, view, chosen, true)?.clusters.near(box, reachMm) ?? [];
}
