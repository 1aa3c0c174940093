import type { StoreApi } from 'zustand/vanilla';
import type { Editor, HistoryEntry } from '../../editor/editor-api.ts';
import { type Autosave, createAutosave } from '../../files/store/autosave.ts';
import { askToKeep } from '../../files/store/keep-storage.ts';
import type { StorePort } from '../../files/store/store-port.ts';
import type { KeptState } from './session.ts';
import { nowIso, WRITER, watched } from './storage.ts';

/** How far a job was kept when it was opened; null for a page nobody has drawn on yet. */
export interface KeptSoFar {
  readonly seq: number;
  readonly undo: readonly HistoryEntry[];
  readonly redo: readonly HistoryEntry[];
  readonly whole: boolean;
}

/**
 * Keeps a job while it is edited. A fresh page is kept from its first step on, so that looking in leaves nothing behind.
 * Gives back how to keep everything and stop.
 */
export function keepJob(
  port: StorePort,
  editor: Editor,
  soFar: KeptSoFar | null,
  kept: StoreApi<KeptState>,
  onFirst: () => void,
): { readonly flush: () => Promise<void>; readonly stop: () => Promise<void> } {
  const into = watched(port, () => kept.setState({ at: Date.now(), failed: null }));
  let saving: Autosave | null = null;
  const start = (opened: KeptSoFar): void => {
    saving = createAutosave<HistoryEntry>({
      port: into,
      edited: { plan: () => editor.store.getState().plan, onCommit: (listener) => editor.onCommit(listener) },
      opened,
      writer: WRITER,
      now: nowIso,
      onTrouble: (failed) => kept.setState({ failed }),
    });
  };
  let waiting: (() => void) | undefined;
  if (soFar) start(soFar);
  else {
    waiting = editor.onCommit((entry) => {
      waiting?.();
      waiting = undefined;
      start({ seq: 0, undo: [entry], redo: [], whole: false });
      void askToKeep(navigator.storage);
      onFirst();
    });
  }
  const flush = (): Promise<void> => saving?.flush() ?? Promise.resolve();
  const onHide = (): void => {
    if (document.visibilityState === 'hidden') void flush();
  };
  document.addEventListener('visibilitychange', onHide);
  window.addEventListener('pagehide', onHide);
  return {
    flush,
    async stop() {
      document.removeEventListener('visibilitychange', onHide);
      window.removeEventListener('pagehide', onHide);
      waiting?.();
      await saving?.stop();
    },
  };
}
