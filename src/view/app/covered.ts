import { screen } from './screen.ts';
import { phone } from './use-phone.ts';

/** As the style sheet has it: bench and bar of the sheet, which the drawing leaves free, and where its stops are. */
const BENCH_PX = 68;
const BAR_PX = 64;
const STRIP_PX = 48;
const HALF = 0.46;
const MOST_HALF_PX = 380;
const USUAL_LETTERS_PX = 16;

/** How much of the drawing's lower edge the sheet of a phone lies over, px; 0 where the panel stands beside it. */
export function coveredPx(): number {
  if (!matchMedia(phone).matches) return 0;
  const stop = screen.getState().sheetStop;
  // Larger letters make all of it larger.
  const by = Number.parseFloat(getComputedStyle(document.documentElement).fontSize) / USUAL_LETTERS_PX || 1;
  if (stop === 'half') return Math.min(innerHeight * HALF, MOST_HALF_PX * by) - BAR_PX * by;
  return stop === 'full' ? innerHeight - (BENCH_PX + STRIP_PX + BAR_PX) * by : 0;
}
