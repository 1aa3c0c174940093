import type { StoreApi } from 'zustand/vanilla';
import type { Editor } from '../../editor/editor-api.ts';
import type { ReportJoin, ReportState } from './report-store.ts';

/** Where the job stands with the device's storage. */
export interface KeptState {
  /** When the last change was written, null before the first. */
  readonly at: number | null;
  readonly failed: string | null;
  /** Open in another tab: this one may ask to take over. */
  readonly elsewhere: boolean;
}

/** One open job: its editor, its report, and how it is kept. */
export interface Session {
  readonly id: string;
  readonly editor: Editor;
  readonly report: StoreApi<ReportState>;
  readonly join: ReportJoin;
  readonly kept: StoreApi<KeptState>;
  /** Keeps everything now. */
  flush(): Promise<void>;
  /** Makes this the tab that may change the job. */
  takeOver(): Promise<void>;
  /** Keeps everything and stops; the claim on the job is its opener's to let go. */
  close(): Promise<void>;
}
