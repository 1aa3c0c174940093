import { useSyncExternalStore } from 'react';

function watch(query: string): (changed: () => void) => () => void {
  return (changed) => {
    const list = matchMedia(query);
    list.addEventListener('change', changed);
    return () => list.removeEventListener('change', changed);
  };
}

/** 699 px with the usual letters: larger ones want the narrow layout sooner, as the style sheets have it. */
export const phone = '(max-width: 43.6875em)';
const watchPhone = watch(phone);

/** A page too narrow for a panel at its side. */
export function usePhone(): boolean {
  return useSyncExternalStore(watchPhone, () => matchMedia(phone).matches);
}
