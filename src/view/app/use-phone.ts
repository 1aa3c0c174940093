import { useSyncExternalStore } from 'react';

function watch(query: string): (changed: () => void) => () => void {
  return (changed) => {
    const list = matchMedia(query);
    list.addEventListener('change', changed);
    return () => list.removeEventListener('change', changed);
  };
}

const phone = '(max-width: 699px)';
const watchPhone = watch(phone);

/** A page too narrow for a panel at its side. */
export function usePhone(): boolean {
  return useSyncExternalStore(watchPhone, () => matchMedia(phone).matches);
}
