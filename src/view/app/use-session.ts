import { createContext, useContext } from 'react';
import { useStore } from 'zustand';
import type { Editor, EditorState } from '../../editor/editor-api.ts';
import type { ReportState } from './report-store.ts';
import { type ScreenState, screen } from './screen.ts';
import type { KeptState, Session } from './session.ts';

export const SessionContext = createContext<Session | null>(null);

/** The open job. Throws outside one: every screen that asks stands inside the frame. */
export function useSession(): Session {
  const session = useContext(SessionContext);
  if (session === null) throw new Error('no job is open here');
  return session;
}

export const useEditor = (): Editor => useSession().editor;
export const useEditorState = <T>(pick: (s: EditorState) => T): T => useStore(useSession().editor.store, pick);
export const useReport = <T>(pick: (s: ReportState) => T): T => useStore(useSession().report, pick);
export const useKept = <T>(pick: (s: KeptState) => T): T => useStore(useSession().kept, pick);
export const useScreen = <T>(pick: (s: ScreenState) => T): T => useStore(screen, pick);
