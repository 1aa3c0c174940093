import type { Editor } from '../../editor/editor-api.ts';
import type { Report } from '../../report/report.ts';
import { type DrawCounts, drawCounts } from '../stage/draw-counts.ts';
import { desk } from './desk.ts';

/** What the browser tests may look at: counts of draws, the editor and the last report. Never in a released build. */
export interface TestHooks {
  readonly draws: DrawCounts;
  readonly editor: Editor | null;
  readonly report: Report | null;
  readonly waiting: boolean;
}

declare global {
  interface Window {
    __kickset?: TestHooks;
  }
}

export function showTestHooks(): void {
  window.__kickset = {
    draws: drawCounts,
    get editor() {
      return desk.getState().session?.editor ?? null;
    },
    get report() {
      return desk.getState().session?.report.getState().report ?? null;
    },
    get waiting() {
      return desk.getState().session?.report.getState().waiting ?? true;
    },
  };
}
