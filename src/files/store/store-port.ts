/** A step of the document as it is kept: what it is called, what it changed, and how to take it back. */
export interface StepEntry {
  readonly label: string;
  readonly patches: readonly unknown[];
  readonly inverse: readonly unknown[];
}

export type StepKind = 'do' | 'undo' | 'redo';

/** One line of the list of jobs. */
export interface JobRow {
  readonly id: string;
  readonly name: string;
  /** When it was last saved, ISO 8601. */
  readonly savedAt: string;
}

/** The whole job at one moment: the text of its file without pictures, and the steps that led there and back. */
export interface Snapshot {
  readonly job: string;
  /** Number of the last step that is in it. */
  readonly seq: number;
  readonly text: string;
  readonly undo: readonly StepEntry[];
  readonly redo: readonly StepEntry[];
}

/** One commit. Numbers of a job rise by one, without gaps. */
export interface StepRow {
  readonly job: string;
  readonly seq: number;
  /** Version of the format the patches were made in: they fit no other. */
  readonly version: number;
  readonly kind: StepKind;
  readonly entry: StepEntry;
}

export interface BlobRow {
  readonly hash: string;
  readonly mediaType: string;
  readonly bytes: Uint8Array;
}

/**
 * Where jobs are kept. Every method is whole or not at all. A rejected promise carries the storage's own error, which
 * `sayStoreTrouble` puts into a sentence.
 */
export interface StorePort {
  jobs(): Promise<readonly JobRow[]>;
  /** Of one job, newest first; at most two are kept, so that one that cannot be read has another behind it. */
  snapshots(job: string): Promise<readonly Snapshot[]>;
  /** Steps of one job after a number, in order. */
  steps(job: string, after: number): Promise<readonly StepRow[]>;
  /** Rejects where the number is taken: two writers would tear the job apart. */
  append(step: StepRow): Promise<void>;
  /** Writes the row of the list and the snapshot; drops snapshots but the one before, and the steps that one holds. */
  writeSnapshot(row: JobRow, snapshot: Snapshot): Promise<void>;
  remove(job: string): Promise<void>;
  putBlob(blob: BlobRow): Promise<void>;
  blob(hash: string): Promise<BlobRow | undefined>;
  blobHashes(): Promise<readonly string[]>;
  removeBlobs(hashes: readonly string[]): Promise<void>;
  /** Things beside the jobs, by name: the user's own boilers and rates, how the tablet is held. */
  shelf(name: string): Promise<unknown>;
  putShelf(name: string, value: unknown): Promise<void>;
}
