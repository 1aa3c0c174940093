import type { Locator, Page } from '@playwright/test';
import { type At, type Fingers, fingers } from './touch.ts';

export type HandKind = 'mouse' | 'touch';

/** One hand, with a mouse or a finger: both do the same things in their own way. */
export interface Hand {
  readonly kind: HandKind;
  /** Presses a key of the page. */
  press(key: Locator): Promise<void>;
  tap(at: At): Promise<void>;
  /** Down at the first place, through the others, up at the last; `steps` moves between each two. */
  drag(way: readonly At[], steps?: number): Promise<void>;
  down(at: At): Promise<void>;
  move(to: At): Promise<void>;
  up(): Promise<void>;
}

function* between(a: At, b: At, steps: number): Generator<At> {
  for (let i = 1; i <= steps; i++) yield { x: a.x + ((b.x - a.x) * i) / steps, y: a.y + ((b.y - a.y) * i) / steps };
}

async function dragWith(hand: Pick<Hand, 'down' | 'move' | 'up'>, way: readonly At[], steps: number): Promise<void> {
  const [start, ...rest] = way;
  if (!start) return;
  await hand.down(start);
  let from = start;
  for (const to of rest) {
    for (const at of between(from, to, steps)) await hand.move(at);
    from = to;
  }
  await hand.up();
}

function mouseHand(page: Page): Hand {
  const hand: Hand = {
    kind: 'mouse',
    press: (key) => key.click(),
    tap: (at) => page.mouse.click(at.x, at.y),
    async down(at) {
      await page.mouse.move(at.x, at.y);
      await page.mouse.down();
    },
    move: (to) => page.mouse.move(to.x, to.y),
    up: () => page.mouse.up(),
    drag: (way, steps = 8) => dragWith(hand, way, steps),
  };
  return hand;
}

function touchHand(page: Page, glass: Fingers): Hand {
  let last: At = { x: 0, y: 0 };
  const frames = (): Promise<unknown> =>
    page.evaluate(() => new Promise((next) => requestAnimationFrame(() => requestAnimationFrame(next))));
  const hand: Hand = {
    kind: 'touch',
    async press(key) {
      await key.tap();
      // The browser makes a click of a tap in its own time.
      await frames();
    },
    async tap(at) {
      await glass.down(0, at);
      await glass.lift(0);
    },
    down: (at) => glass.down(0, at),
    move(to) {
      last = to;
      return glass.move([0, to]);
    },
    async up() {
      // A finger rests before it is lifted: the browser takes the next tap after a flick only for the end of the flick.
      for (const off of [0.5, 0, 0.5, 0]) {
        await glass.move([0, { x: last.x, y: last.y + off }]);
        await frames();
      }
      await glass.lift(0);
    },
    drag: (way, steps = 8) => dragWith(hand, way, steps),
  };
  return hand;
}

export async function handOf(page: Page, kind: HandKind): Promise<Hand> {
  return kind === 'mouse' ? mouseHand(page) : touchHand(page, await fingers(page));
}
