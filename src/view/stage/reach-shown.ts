import { useMemo } from 'react';
import { useStore } from 'zustand';
import { createStore } from 'zustand/vanilla';
import type { View } from '../../drawing/display-list.ts';
import { type ReachDrawing, reachDrawing } from '../../drawing/reach/reach-drawing.ts';
import type { ReachAnswer } from '../../report/report.ts';
import { useEditorState, useReport, useScreen } from '../app/use-session.ts';
import { chaptersOf, openChapterOf } from '../panels/chapters.ts';

export const REACH_CHAPTER = 'section:reach';

interface ReachShown {
  /** Stays on the plan when its chapter is closed. */
  readonly kept: boolean;
  /** Key of the answer that is looked at. */
  readonly looked: string | null;
}

export const reachShown = createStore<ReachShown>(() => ({ kept: false, looked: null }));

const NONE: readonly ReachAnswer[] = [];

/** Is the chapter of the ways open, whether asked for or because it comes first? */
export function useReachChapterOpen(): boolean {
  const plan = useEditorState((s) => s.plan);
  const selection = useEditorState((s) => s.selection);
  const report = useReport((s) => s.report);
  const asked = useScreen((s) => s.chapter);
  return useMemo(() => {
    if (asked !== null && asked !== REACH_CHAPTER) return false;
    if (!report || report.reach.length === 0) return false;
    return openChapterOf(chaptersOf({ plan, selection }, report), asked)?.id === REACH_CHAPTER;
  }, [plan, selection, report, asked]);
}

/** The ways water can run, on a plan, while somebody wants to see them; null where nothing of it is shown. */
export function useReachDrawing(view: View): ReachDrawing | null {
  const open = useReachChapterOpen();
  const { kept, looked } = useStore(reachShown);
  const plan = useEditorState((s) => s.plan);
  const answers = useReport((s) => s.report?.reach) ?? NONE;
  return useMemo(() => {
    if ((!open && !kept) || answers.length === 0 || view.kind !== 'plan') return null;
    return reachDrawing(plan, view, answers, { looked: open ? looked : null });
  }, [open, kept, looked, plan, view, answers]);
}
