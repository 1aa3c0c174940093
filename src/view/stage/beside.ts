import { type Beside, screen } from '../app/screen.ts';
import { useScreen } from '../app/use-session.ts';
import { keepShare, shareWithin } from './plan-share.ts';

export function setShare(share: number): void {
  const planShare = shareWithin(share);
  keepShare(planShare);
  screen.setState({ planShare });
}

/** Puts something beside the plan; where there is room for one of them only, it is the one that shows. */
export function showBeside(beside: Beside): void {
  screen.setState((s) => ({ beside, besideUp: true, sheetStop: s.sheetStop === 'full' ? 'low' : s.sheetStop }));
}

export const closeBeside = (): void => screen.setState({ beside: null, besideUp: false });

export type Shows = 'plan' | 'both' | 'beside';

/** Narrower than this, or far higher than wide, a drawing is one pane at a time. */
const LEAST_PX = 620;
const LEAST_SHAPE = 0.8;

/** Which panes a drawing of a size has room for, and shows. */
export function showsIn(
  size: { readonly width: number; readonly height: number },
  beside: boolean,
  up: boolean,
): Shows {
  if (!beside) return 'plan';
  if (size.width >= LEAST_PX && size.width >= LEAST_SHAPE * size.height) return 'both';
  return up ? 'beside' : 'plan';
}

export function useShows(size: { readonly width: number; readonly height: number }): Shows {
  const beside = useScreen((s) => s.beside !== null);
  const up = useScreen((s) => s.besideUp);
  return showsIn(size, beside, up);
}
