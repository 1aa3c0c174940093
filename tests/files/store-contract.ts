import { describe, expect, test } from 'vitest';
import type { Snapshot, StepRow, StorePort } from '../../src/files/store/store-port.ts';

export const step = (job: string, seq: number, more: Partial<StepRow> = {}): StepRow => ({
  job,
  seq,
  version: 1,
  kind: 'do',
  entry: { label: `step ${seq}`, patches: [], inverse: [] },
  ...more,
});
const snap = (job: string, seq: number): Snapshot => ({ job, seq, text: `text ${seq}`, undo: [], redo: [] });
const row = (id: string) => ({ id, name: `Job ${id}`, savedAt: '2026-05-01T09:00:00.000Z' });
const seqs = async (port: StorePort, job: string, after = -1) => (await port.steps(job, after)).map((s) => s.seq);

/** What every place to keep jobs has to do. */
export function storeContract(name: string, open: () => Promise<StorePort>): void {
  describe(`${name} as a place to keep jobs`, () => {
    test('gives back steps of one job in order, after a number', async () => {
      const port = await open();
      for (const seq of [1, 2, 3]) await port.append(step('a', seq));
      await port.append(step('ab', 2));
      expect(await seqs(port, 'a')).toEqual([1, 2, 3]);
      expect(await seqs(port, 'a', 1)).toEqual([2, 3]);
      expect(await port.steps('b', -1)).toEqual([]);
      expect((await port.steps('a', 2))[0]).toEqual(step('a', 3));
    });

    test('takes no number twice', async () => {
      const port = await open();
      await port.append(step('a', 1));
      await expect(port.append(step('a', 1, { kind: 'undo' }))).rejects.toThrow();
      expect(await port.steps('a', 0)).toEqual([step('a', 1)]);
    });

    test('keeps two snapshots, newest first, and the steps since the older', async () => {
      const port = await open();
      await port.writeSnapshot(row('a'), snap('a', 0));
      for (const seq of [1, 2]) await port.append(step('a', seq));
      await port.writeSnapshot(row('a'), snap('a', 2));
      expect((await port.snapshots('a')).map((s) => s.seq)).toEqual([2, 0]);
      expect(await seqs(port, 'a')).toEqual([1, 2]);
      for (const seq of [3, 4]) await port.append(step('a', seq));
      await port.writeSnapshot(row('a'), snap('a', 4));
      expect((await port.snapshots('a')).map((s) => s.seq)).toEqual([4, 2]);
      expect(await seqs(port, 'a')).toEqual([3, 4]);
      expect(await port.jobs()).toEqual([row('a')]);
    });

    test('a snapshot of the same number takes the place of the old one', async () => {
      const port = await open();
      await port.writeSnapshot(row('a'), snap('a', 3));
      await port.writeSnapshot({ ...row('a'), name: 'renamed' }, { ...snap('a', 3), text: 'new' });
      expect((await port.snapshots('a')).map((s) => s.text)).toEqual(['new']);
      expect((await port.jobs()).map((j) => j.name)).toEqual(['renamed']);
    });

    test('removes one job and leaves its neighbours', async () => {
      const port = await open();
      for (const id of ['a', 'ab', 'b']) {
        await port.writeSnapshot(row(id), snap(id, 0));
        await port.append(step(id, 1));
      }
      await port.remove('a');
      expect((await port.jobs()).map((j) => j.id).sort()).toEqual(['ab', 'b']);
      expect(await port.snapshots('a')).toEqual([]);
      expect(await seqs(port, 'a')).toEqual([]);
      expect(await seqs(port, 'ab')).toEqual([1]);
    });

    test('keeps pictures and what lies on the shelf', async () => {
      const port = await open();
      await port.putBlob({ hash: 'h1', mediaType: 'image/png', bytes: Uint8Array.of(1, 2, 3) });
      expect((await port.blob('h1'))?.bytes).toEqual(Uint8Array.of(1, 2, 3));
      expect(await port.blobHashes()).toEqual(['h1']);
      await port.removeBlobs(['h1', 'none']);
      expect(await port.blob('h1')).toBeUndefined();
      expect(await port.shelf('things')).toBeUndefined();
      await port.putShelf('things', { boilers: [{ name: 'mine' }] });
      expect(await port.shelf('things')).toEqual({ boilers: [{ name: 'mine' }] });
    });

    test('hands out copies', async () => {
      const port = await open();
      const told = step('a', 1);
      await port.append(told);
      const [given] = await port.steps('a', 0);
      (given!.entry.patches as unknown[]).push('spoiled');
      expect(await port.steps('a', 0)).toEqual([told]);
    });
  });
}
