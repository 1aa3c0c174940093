import type { CDPSession, Page } from '@playwright/test';

export interface At {
  readonly x: number;
  readonly y: number;
}

/** Fingers on the glass, as trusted touches: each keeps its number until it is lifted. */
export interface Fingers {
  down(id: number, at: At): Promise<void>;
  move(...to: readonly (readonly [id: number, at: At])[]): Promise<void>;
  lift(id: number): Promise<void>;
}

export async function fingers(page: Page): Promise<Fingers> {
  const session: CDPSession = await page.context().newCDPSession(page);
  const down = new Map<number, At>();
  const points = () => [...down].map(([id, at]) => ({ id, x: at.x, y: at.y }));
  const send = (type: 'touchStart' | 'touchMove' | 'touchEnd', touchPoints: ReturnType<typeof points>) =>
    session.send('Input.dispatchTouchEvent', { type, touchPoints });
  return {
    async down(id, at) {
      down.set(id, at);
      await send('touchStart', points());
    },
    async move(...to) {
      for (const [id, at] of to) down.set(id, at);
      await send('touchMove', points());
    },
    async lift(id) {
      down.delete(id);
      await send('touchEnd', points());
    },
  };
}
