import { idbPort } from '../../files/store/idb-port.ts';
import { memoryPort } from '../../files/store/memory-port.ts';
import type { StorePort } from '../../files/store/store-port.ts';

let opened: Promise<StorePort> | undefined;

/** Where jobs are kept: the browser's storage, or for as long as the page is open where that is closed to it. */
export function storage(): Promise<StorePort> {
  opened ??= idbPort().catch(() => memoryPort());
  return opened;
}

/** What writes files and snapshots; told in them, so that an unreadable one says where it came from. */
export const WRITER = 'Kickset 0.1';

export const nowIso = (): string => new Date().toISOString();

/** Tells of every successful write: the time beside the job's name is the storage's own, not a hope. */
export function watched(port: StorePort, onKept: () => void): StorePort {
  return {
    ...port,
    append: async (step) => {
      await port.append(step);
      onKept();
    },
    writeSnapshot: async (row, snapshot) => {
      await port.writeSnapshot(row, snapshot);
      onKept();
    },
  };
}
