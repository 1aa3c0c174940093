import type { PointerInput } from '../../editor/editor-api.ts';

/** What one frame brings: all that happened since the last, with the moves of each pointer joined to their last. */
export interface PointerFeed {
  push(event: PointerInput): void;
  /** Gives what waits at once, as at the end of a gesture. */
  flush(): void;
  /** Forgets what waits: the pointers were lost. */
  stop(): void;
}

export interface FrameClock {
  request(call: () => void): number;
  cancel(handle: number): void;
}

const browserClock: FrameClock = {
  request: (call) => requestAnimationFrame(call),
  cancel: (handle) => cancelAnimationFrame(handle),
};

/**
 * Takes pointer events as they come and gives at most one move for each pointer and frame. Down, up and cancel keep
 * their place in the order: they are given at once, with the moves before them.
 */
export function createPointerFeed(give: (event: PointerInput) => void, clock: FrameClock = browserClock): PointerFeed {
  const moves = new Map<number, PointerInput>();
  let frame: number | null = null;
  const flush = (): void => {
    if (frame !== null) clock.cancel(frame);
    frame = null;
    const waiting = [...moves.values()];
    moves.clear();
    for (const move of waiting) give(move);
  };
  return {
    push(event) {
      if (event.type === 'move') {
        moves.set(event.pointerId, event);
        if (frame === null) {
          frame = clock.request(() => {
            frame = null;
            flush();
          });
        }
        return;
      }
      flush();
      give(event);
    },
    flush,
    stop() {
      if (frame !== null) clock.cancel(frame);
      frame = null;
      moves.clear();
    },
  };
}
