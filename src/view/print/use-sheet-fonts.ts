import { useEffect, useState } from 'react';
import { sheetFonts } from './sheet-fonts.ts';

export type FontState = 'loading' | 'ready' | 'failed';

/** Whether sheets can be set in their own font yet. A page that is shown before it would be printed in another. */
export function useSheetFonts(): FontState {
  const [state, setState] = useState<FontState>('loading');
  useEffect(() => {
    let here = true;
    const tell = (now: FontState) => () => {
      if (here) setState(now);
    };
    sheetFonts().then(tell('ready'), tell('failed'));
    return () => {
      here = false;
    };
  }, []);
  return state;
}
