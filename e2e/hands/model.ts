import type { Page } from '@playwright/test';
import type { Camera, Selected } from '../../src/editor/editor-api.ts';
import type { Plan } from '../../src/plan/plan.ts';
import type { Xyz } from '../../src/plan/records/parts.ts';
import type { Report } from '../../src/report/report.ts';
import type { TestHooks } from '../../src/view/app/test-hooks.ts';

/** What the editor holds, as plain data. */
export interface Held {
  readonly plan: Plan;
  readonly revision: number;
  readonly undo: readonly string[];
  readonly redo: readonly string[];
  readonly readOnly: string | null;
  readonly tool: string;
  readonly toolState: string;
  readonly drafting: boolean;
  readonly labels: readonly string[];
  readonly selection: readonly Selected[];
  readonly typed: string;
  readonly said: string | null;
  readonly service: string;
  readonly size: string | null;
  readonly camera: Camera;
  readonly faceCamera: Camera | null;
}

export type PaneName = 'plan' | 'face';

export async function held(page: Page): Promise<Held> {
  return page.evaluate(() => {
    const s = window.__kickset?.editor?.store.getState();
    if (!s) throw new Error('no job is open');
    return {
      plan: s.plan,
      revision: s.revision,
      undo: s.history.undo,
      redo: s.history.redo,
      readOnly: s.readOnly,
      tool: s.tool,
      toolState: s.toolState,
      drafting: s.draft !== null,
      labels: s.draft?.labels.map((l) => l.text) ?? [],
      selection: s.selection,
      typed: s.typed,
      said: s.said?.text ?? null,
      service: s.inHand.service,
      size: s.inHand.tube.size,
      camera: s.panes.plan.camera,
      faceCamera: s.panes.face?.camera ?? null,
    };
  });
}

/** Waits until what is shown is the answer to what is drawn, and gives it. */
export async function answer(page: Page, timeout = 15_000): Promise<Report> {
  await page.waitForFunction(() => window.__kickset?.report && !window.__kickset.waiting, undefined, { timeout });
  return page.evaluate(() => {
    const report = window.__kickset?.report;
    if (!report) throw new Error('no report');
    return report;
  });
}

export const draws = (page: Page): Promise<TestHooks['draws']> =>
  page.evaluate(() => {
    const counts = window.__kickset?.draws;
    if (!counts) throw new Error('no counts');
    return counts;
  });

/** Page px at which a place is shown in a pane. Places on a face are told along the face and up: `{x: s, y: 0, z}`. */
export async function pxOf(page: Page, at: Xyz, name: PaneName = 'plan'): Promise<{ x: number; y: number }> {
  return page.evaluate(
    ({ at, name }) => {
      const pane = window.__kickset?.editor?.store.getState().panes[name];
      const box = document.querySelector(`.pane-box[data-pane="${name}"]`)?.getBoundingClientRect();
      if (!pane || !box) throw new Error(`no ${name} pane`);
      const on = name === 'plan' ? [at.x, at.y] : [at.x, at.z];
      const [cx, cy] = pane.camera.centre;
      return {
        x: box.left + pane.width / 2 + ((on[0] ?? 0) - cx) / pane.camera.mmPerPx,
        y: box.top + pane.height / 2 - ((on[1] ?? 0) - cy) / pane.camera.mmPerPx,
      };
    },
    { at, name },
  );
}

/** Nothing moves by itself and nothing waits to be drawn: some frames have passed without a draw of any layer. */
export async function atRest(page: Page): Promise<void> {
  await page.evaluate(() => Promise.allSettled(document.getAnimations().map((a) => a.finished)));
  await page.waitForFunction(
    () =>
      new Promise<boolean>((resolve) => {
        const count = () => JSON.stringify(window.__kickset?.draws);
        const before = count();
        let frames = 0;
        const look = (): void => {
          frames += 1;
          if (frames < 4) requestAnimationFrame(look);
          else resolve(before === count());
        };
        requestAnimationFrame(look);
      }),
  );
}

/** How many steps of the open job the device's storage holds, in a snapshot or by themselves; undoing is a step too. */
export const stepsKept = (page: Page): Promise<number> =>
  page.evaluate(
    () =>
      new Promise<number>((resolve, fail) => {
        const job = window.__kickset?.editor?.store.getState().plan.id ?? '';
        const asked = indexedDB.open('kickset');
        asked.onerror = () => fail(asked.error);
        asked.onsuccess = () => {
          const db = asked.result;
          const tx = db.transaction(['snapshots', 'steps']);
          const of = IDBKeyRange.bound([job], [job, []]);
          const keys = [tx.objectStore('snapshots').getAllKeys(of), tx.objectStore('steps').getAllKeys(of)];
          tx.oncomplete = () => {
            db.close();
            const seqs = keys.flatMap((k) => k.result as unknown as [string, number][]).map(([, seq]) => seq);
            resolve(Math.max(0, ...seqs));
          };
        };
      }),
  );
