import { createStore } from 'zustand/vanilla';

const KEY = 'kickset.ribbon';
/** The ribbon as it is pulled out, px. */
export const OUT_PX = 360;

function stored(): boolean {
  try {
    return localStorage.getItem(KEY) === 'out';
  } catch {
    return false;
  }
}

/** Is the ribbon pulled out to the long section? Kept on the device; a phone starts with the drawing. */
export const pulled = createStore<{ readonly out: boolean }>(() => ({ out: innerWidth >= 700 && stored() }));

export function pullOut(out: boolean): void {
  pulled.setState({ out });
  try {
    localStorage.setItem(KEY, out ? 'out' : 'in');
  } catch {
    // It holds until the page is closed.
  }
}
