import type { BlobRow, JobRow, Snapshot, StepRow, StorePort } from './store-port.ts';

export interface MemoryPort extends StorePort {
  /** Makes every write from now on fail as a storage does; null lets them through again. */
  failWith(error: Error | null): void;
}

/** Jobs kept for as long as the page is open: for tests, and for a browser that keeps nothing. */
export function memoryPort(): MemoryPort {
  const jobs = new Map<string, JobRow>();
  const snapshots = new Map<string, Snapshot[]>();
  const steps = new Map<string, StepRow[]>();
  const blobs = new Map<string, BlobRow>();
  const shelves = new Map<string, unknown>();
  let failure: Error | null = null;

  const write = async (change: () => void): Promise<void> => {
    if (failure !== null) throw failure;
    change();
  };
  // Copies in and out, as a real storage does: nobody can change what is kept by holding on to it.
  const copy = <T>(value: T): T => structuredClone(value);

  return {
    failWith(error) {
      failure = error;
    },
    jobs: async () => copy([...jobs.values()]),
    snapshots: async (job) => copy(snapshots.get(job) ?? []),
    steps: async (job, after) => copy((steps.get(job) ?? []).filter((step) => step.seq > after)),
    append: (step) =>
      write(() => {
        const of = steps.get(step.job) ?? [];
        if (of.some((other) => other.seq === step.seq)) throw new Error(`step ${step.seq} of ${step.job} is taken`);
        steps.set(
          step.job,
          [...of, copy(step)].sort((a, b) => a.seq - b.seq),
        );
      }),
    writeSnapshot: (row, snapshot) =>
      write(() => {
        const others = (snapshots.get(row.id) ?? []).filter((other) => other.seq < snapshot.seq);
        const kept = [copy(snapshot), ...others].slice(0, 2);
        const oldest = kept.at(-1)?.seq ?? 0;
        jobs.set(row.id, copy(row));
        snapshots.set(row.id, kept);
        steps.set(
          row.id,
          (steps.get(row.id) ?? []).filter((step) => step.seq > oldest),
        );
      }),
    remove: (job) =>
      write(() => {
        for (const of of [jobs, snapshots, steps]) of.delete(job);
      }),
    putBlob: (blob) => write(() => void blobs.set(blob.hash, copy(blob))),
    blob: async (hash) => copy(blobs.get(hash)),
    blobHashes: async () => [...blobs.keys()],
    removeBlobs: (hashes) =>
      write(() => {
        for (const hash of hashes) blobs.delete(hash);
      }),
    shelf: async (name) => copy(shelves.get(name)),
    putShelf: (name, value) => write(() => void shelves.set(name, copy(value))),
  };
}
