import { createStore } from 'zustand/vanilla';
import { storedGloves } from '../help/stored-gloves.ts';
import { storedShare } from '../stage/plan-share.ts';

/** What lies over the drawing. One at a time, so that Escape always knows what to close. */
export type Over = 'words' | 'jobs' | 'print' | 'help' | 'more' | 'my-things' | 'flue-face' | 'sums' | 'options' | null;
/** What stands beside the plan, and what of the house it shows: a run, all that hangs on it, or everything. */
export interface Beside {
  readonly what: 'iso';
  readonly scope: 'run' | 'system' | 'all';
  readonly run: string | null;
}
/** How far the panel is pulled up on a phone. */
export type SheetStop = 'low' | 'half' | 'full';

/** What of the page is open: nothing of it is ever in the document or in its history. */
export interface ScreenState {
  /** Id of the open chapter; null lets the panel choose. */
  readonly chapter: string | null;
  readonly folded: boolean;
  readonly sheetStop: SheetStop;
  readonly over: Over;
  /** Key of the finding that is told in full. */
  readonly finding: string | null;
  /** Extra keys over the bench for what is in hand. */
  readonly tray: boolean;
  readonly beside: Beside | null;
  /** Where there is room for one of the two: it is the one beside the plan that shows. */
  readonly besideUp: boolean;
  /** Part of the drawing's width that the plan has while both show, of 100. */
  readonly planShare: number;
  /** The hand that holds the tablet: panel and ribbon change sides with it. */
  readonly hand: 'left' | 'right';
  readonly undone: { readonly text: string; readonly undo: () => void } | null;
}

const HAND_KEY = 'kickset.hand';

function storedHand(): 'left' | 'right' {
  try {
    return localStorage.getItem(HAND_KEY) === 'left' ? 'left' : 'right';
  } catch {
    return 'right';
  }
}

export const screen = createStore<ScreenState>(() => ({
  chapter: null,
  folded: false,
  sheetStop: 'low',
  over: null,
  finding: null,
  tray: false,
  beside: null,
  besideUp: false,
  planShare: 50,
  hand: 'right',
  undone: null,
}));

/** Reads what the device keeps of the layout, and folds the panel where there is little room. */
export function startScreen(): void {
  document.documentElement.dataset.gloves = storedGloves() ? 'yes' : 'no';
  screen.setState({
    hand: storedHand(),
    planShare: storedShare(),
    folded: matchMedia('(min-width: 43.75em) and (max-width: 63.75em)').matches,
  });
}

export function chooseHand(hand: 'left' | 'right'): void {
  try {
    localStorage.setItem(HAND_KEY, hand);
  } catch {
    // It holds until the page is closed.
  }
  screen.setState({ hand });
}

export function openChapter(chapter: string): void {
  screen.setState((s) => ({ chapter, folded: false, sheetStop: s.sheetStop === 'low' ? 'half' : s.sheetStop }));
}

export function openFinding(key: string | null): void {
  screen.setState({ finding: key });
  if (key !== null) openChapter('findings');
}

/** A sheet pulled up all the way leaves nothing of the drawing to be looked at. */
export const lowerSheet = (): void =>
  screen.setState(({ sheetStop }) => ({ sheetStop: sheetStop === 'full' ? 'half' : sheetStop }));

export const setOver = (over: Over): void => screen.setState({ over });
