/** Frames from the first render until the first line can be drawn: one paints the page, one says that it has been. */
const FRAMES = 3;

const nextFrame = (): Promise<number> => new Promise((next) => requestAnimationFrame(next));

/** Fetches a part of the page that the first line does without, once that could be drawn. */
export async function afterFirstLine<T>(fetch: () => Promise<T>): Promise<T> {
  for (let i = 0; i < FRAMES; i++) await nextFrame();
  return fetch();
}
