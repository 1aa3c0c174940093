import { createStore } from 'zustand/vanilla';

/** Which parts of the job card stand open. Kept while the page is open, so that coming back finds them as they were. */
export const folds = createStore<{ readonly open: ReadonlySet<string> }>(() => ({ open: new Set() }));

export function turnFold(id: string): void {
  folds.setState(({ open }) => {
    const next = new Set(open);
    if (!next.delete(id)) next.add(id);
    return { open: next };
  });
}

export const openFold = (id: string): void => folds.setState(({ open }) => ({ open: new Set([...open, id]) }));
