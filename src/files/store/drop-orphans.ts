import type { StorePort } from './store-port.ts';

const SHELF = 'pictures-without-job';

/** Does anything of a job, its steps back and forth too, still speak of a picture? */
async function spokenOf(port: StorePort, hashes: readonly string[]): Promise<ReadonlySet<string>> {
  const left = new Set(hashes);
  const spoken = new Set<string>();
  const look = (text: string): void => {
    for (const hash of left) {
      if (!text.includes(hash)) continue;
      left.delete(hash);
      spoken.add(hash);
    }
  };
  for (const job of await port.jobs()) {
    if (left.size === 0) break;
    for (const { text, undo, redo } of await port.snapshots(job.id)) look(text + JSON.stringify([undo, redo]));
    look(JSON.stringify(await port.steps(job.id, Number.NEGATIVE_INFINITY)));
  }
  return spoken;
}

/**
 * Removes pictures that no job speaks of, not even in a step that could be taken back. One is only removed when it was
 * without a job at the last call too, so that a picture just kept, whose step is not written yet, is never lost.
 * Gives how many were removed.
 */
export async function dropOrphans(port: StorePort): Promise<number> {
  const all = await port.blobHashes();
  if (all.length === 0) return 0;
  const spoken = await spokenOf(port, all);
  const orphans = all.filter((hash) => !spoken.has(hash));
  const before = await port.shelf(SHELF);
  const known = new Set(Array.isArray(before) ? before : []);
  const gone = orphans.filter((hash) => known.has(hash));
  if (gone.length > 0) await port.removeBlobs(gone);
  await port.putShelf(
    SHELF,
    orphans.filter((hash) => !known.has(hash)),
  );
  return gone.length;
}
