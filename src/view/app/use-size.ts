import { type RefObject, useLayoutEffect, useState } from 'react';

/** Size of an element in CSS px, kept true while it changes; 0 by 0 before it is on the page. */
export function useSize(of: RefObject<HTMLElement | null>): { readonly width: number; readonly height: number } {
  const [size, setSize] = useState({ width: 0, height: 0 });
  useLayoutEffect(() => {
    const element = of.current;
    if (!element) return;
    const read = (): void => {
      // Not the box on the screen: a pane that is folding up is still moved and scaled there.
      const { offsetWidth: width, offsetHeight: height } = element;
      setSize((s) => (s.width === width && s.height === height ? s : { width, height }));
    };
    read();
    const watch = new ResizeObserver(read);
    watch.observe(element);
    return () => watch.disconnect();
  }, [of]);
  return size;
}
