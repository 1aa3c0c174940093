import { createStore } from 'zustand/vanilla';
import type { Plan } from '../../plan/plan.ts';
import type { Evaluator } from '../../report/report.ts';
import { startEvaluator } from '../../worker/evaluator.ts';
import { createSession } from './create-session.ts';
import { newPlan } from './new-plan.ts';
import { screen } from './screen.ts';
import type { Session } from './session.ts';

export interface DeskState {
  readonly session: Session | null;
  /** What stood in the way of the last thing that was opened, in words. */
  readonly trouble: string | null;
}

/** What lies on the desk: the open job. */
export const desk = createStore<DeskState>(() => ({ session: null, trouble: null }));

let evaluator: Evaluator | undefined;

/** Puts a plan on the desk as the open job. */
export async function openPlan(plan: Plan, readOnly: string | null = null): Promise<void> {
  evaluator ??= startEvaluator();
  const before = desk.getState().session;
  if (before) await before.close();
  screen.setState({ over: null, chapter: null, finding: null, tray: false });
  desk.setState({ session: createSession({ id: plan.id, plan, evaluator, readOnly }), trouble: null });
}

export const openEmpty = (): Promise<void> => openPlan(newPlan(''));
