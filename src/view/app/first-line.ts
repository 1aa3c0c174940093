/** Kept once the first line can be drawn: the page has been painted, and all that it needed has come. */
const firstLine: Promise<void> = new Promise((done) => {
  const watch = new PerformanceObserver((list) => {
    if (list.getEntriesByName('first line').length === 0) return;
    watch.disconnect();
    done();
  });
  watch.observe({ type: 'mark', buffered: true });
});

/** For what stands on the page from the start and yet is not waited for: it is fetched when the first line can be drawn. */
export const afterFirstLine =
  <T>(load: () => Promise<T>) =>
  (): Promise<T> =>
    firstLine.then(load);
