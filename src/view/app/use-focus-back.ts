import { useLayoutEffect } from 'react';

/** Nothing on the page has the focus: what had it is gone. */
export const isFocusLost = (): boolean => document.activeElement === null || document.activeElement === document.body;

/** When what lay over the page is gone, the focus goes back to what it was opened from, where nothing else has taken it. */
export function useFocusBack(): void {
  useLayoutEffect(() => {
    const before = document.activeElement;
    return () => {
      queueMicrotask(() => {
        if (isFocusLost() && before instanceof HTMLElement && before.isConnected) before.focus({ preventScroll: true });
      });
    };
  }, []);
}
