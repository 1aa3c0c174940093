import { type DBSchema, type IDBPDatabase, openDB } from 'idb';
import type { BlobRow, JobRow, Snapshot, StepRow, StorePort } from './store-port.ts';

interface Shelves extends DBSchema {
  jobs: { key: string; value: JobRow };
  snapshots: { key: [string, number]; value: Snapshot };
  steps: { key: [string, number]; value: StepRow };
  blobs: { key: string; value: BlobRow };
  shelf: { key: string; value: unknown };
}

/** Layout of the storage, apart from the version of the file format. */
const LAYOUT = 1;

/** Every key of one job: a list sorts after any number. */
const of = (job: string, after = Number.NEGATIVE_INFINITY): IDBKeyRange =>
  IDBKeyRange.bound([job, after], [job, []], true, true);

/**
 * Jobs kept by this browser. `onClosed` is called when the storage goes away under us: a newer Kickset in another tab
 * needs another layout, or the browser cleared it.
 */
export async function idbPort(name = 'kickset', onClosed: () => void = () => {}): Promise<StorePort> {
  const db: IDBPDatabase<Shelves> = await openDB<Shelves>(name, LAYOUT, {
    upgrade(made) {
      made.createObjectStore('jobs', { keyPath: 'id' });
      made.createObjectStore('snapshots', { keyPath: ['job', 'seq'] });
      made.createObjectStore('steps', { keyPath: ['job', 'seq'] });
      made.createObjectStore('blobs', { keyPath: 'hash' });
      made.createObjectStore('shelf');
    },
    blocking(_from, _to, event) {
      (event.target as IDBDatabase).close();
      onClosed();
    },
    terminated: onClosed,
  });

  return {
    jobs: () => db.getAll('jobs'),
    snapshots: async (job) => (await db.getAll('snapshots', of(job))).reverse(),
    steps: (job, after) => db.getAll('steps', of(job, after)),
    async append(step) {
      await db.add('steps', step);
    },
    async writeSnapshot(row, snapshot) {
      const tx = db.transaction(['jobs', 'snapshots', 'steps'], 'readwrite');
      const done = tx.done;
      const work = async (): Promise<void> => {
        const snapshots = tx.objectStore('snapshots');
        const seqs = (await snapshots.getAllKeys(of(row.id))).map(([, seq]) => seq);
        const before = Math.max(...seqs.filter((seq) => seq < snapshot.seq));
        for (const seq of seqs) if (seq !== before) await snapshots.delete([row.id, seq]);
        await snapshots.put(snapshot);
        await tx.objectStore('jobs').put(row);
        const held = Number.isFinite(before) ? before : snapshot.seq;
        await tx.objectStore('steps').delete(IDBKeyRange.bound([row.id], [row.id, held]));
      };
      await Promise.all([work(), done]);
    },
    async remove(job) {
      const tx = db.transaction(['jobs', 'snapshots', 'steps'], 'readwrite');
      await Promise.all([
        tx.objectStore('jobs').delete(job),
        tx.objectStore('snapshots').delete(of(job)),
        tx.objectStore('steps').delete(of(job)),
        tx.done,
      ]);
    },
    async putBlob(blob) {
      await db.put('blobs', blob);
    },
    blob: (hash) => db.get('blobs', hash),
    blobHashes: () => db.getAllKeys('blobs'),
    async removeBlobs(hashes) {
      const tx = db.transaction('blobs', 'readwrite');
      await Promise.all([...hashes.map((hash) => tx.store.delete(hash)), tx.done]);
    },
    shelf: (key) => db.get('shelf', key),
    async putShelf(key, value) {
      await db.put('shelf', value, key);
    },
  };
}
