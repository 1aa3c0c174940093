import { createStore } from 'zustand/vanilla';
import type { PenUse } from '../../editor/editor-api.ts';

/** How the hand works on this device. */
export interface HandSettings {
  readonly pen: PenUse;
  /** A lens shows what lies under the finger. */
  readonly lens: boolean;
}

const PEN_KEY = 'kickset.pen';
const LENS_KEY = 'kickset.lens';
const USES: readonly PenUse[] = ['auto', 'pen', 'fingers'];

function stored(): HandSettings {
  try {
    const pen = USES.find((use) => use === localStorage.getItem(PEN_KEY)) ?? 'auto';
    return { pen, lens: localStorage.getItem(LENS_KEY) !== 'no' };
  } catch {
    return { pen: 'auto', lens: true };
  }
}

export const handSettings = createStore<HandSettings>(stored);

function keep(key: string, value: string): void {
  try {
    localStorage.setItem(key, value);
  } catch {
    // It holds until the page is closed.
  }
}

export function choosePen(pen: PenUse): void {
  keep(PEN_KEY, pen);
  handSettings.setState({ pen });
}

export function chooseLens(lens: boolean): void {
  keep(LENS_KEY, lens ? 'yes' : 'no');
  handSettings.setState({ lens });
}
