import type { Channel, Locks } from '../../src/files/store/job-lock.ts';

type Hold = (lock: unknown) => Promise<void>;
interface Waiting {
  readonly hold: Hold;
  readonly resolve: () => void;
  readonly reject: (error: Error) => void;
}
const aborted = () => Object.assign(new Error('aborted'), { name: 'AbortError' });

/** Locks and channels of one browser, shared by its tabs, as the standards tell: one holder, a queue, and stealing. */
export function fakeBrowser() {
  const held = new Map<string, { steal: () => void }>();
  const queues = new Map<string, Waiting[]>();
  const wires = new Map<string, Set<(event: { data: unknown }) => void>>();
  let deaf = false;

  const grant = (name: string, { hold, resolve, reject }: Waiting): void => {
    const mark = {
      steal: () => {
        held.delete(name);
        reject(aborted());
      },
    };
    held.set(name, mark);
    void hold({ name }).then(() => {
      if (held.get(name) !== mark) return;
      held.delete(name);
      resolve();
      const next = queues.get(name)?.shift();
      if (next) grant(name, next);
    });
  };
  const locks: Locks = {
    request: (name, how, hold) =>
      new Promise<void>((resolve, reject) => {
        const waiting = { hold, resolve, reject };
        const holder = held.get(name);
        if (how.steal === true) holder?.steal();
        if (!held.has(name)) return queueMicrotask(() => grant(name, waiting));
        if (how.ifAvailable === true) return void hold(null).then(resolve);
        const queue = queues.get(name) ?? [];
        queues.set(name, queue);
        queue.push(waiting);
        how.signal?.addEventListener('abort', () => {
          const at = queue.indexOf(waiting);
          if (at === -1) return;
          queue.splice(at, 1);
          reject(aborted());
        });
      }),
  };
  const channel = (name: string): Channel => {
    const all = wires.get(name) ?? new Set();
    wires.set(name, all);
    let own: ((event: { data: unknown }) => void) | null = null;
    return {
      postMessage(data) {
        for (const listener of all) if (listener !== own && !deaf) queueMicrotask(() => listener({ data }));
      },
      addEventListener(_type, listener) {
        own = listener;
        all.add(listener);
      },
      close() {
        if (own) all.delete(own);
      },
    };
  };
  return {
    locks,
    channel,
    /** As when the tab that holds the lock is asleep: no message gets there. */
    goDeaf: () => {
      deaf = true;
    },
    wiresOf: (name: string) => wires.get(name)?.size ?? 0,
  };
}
