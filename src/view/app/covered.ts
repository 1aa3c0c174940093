import { screen } from './screen.ts';

/** As the style sheet has it: bench and bar of the sheet, which the drawing leaves free, and where its stops are. */
const BENCH_PX = 68;
const BAR_PX = 64;
const STRIP_PX = 48;
const HALF = 0.46;
const MOST_HALF_PX = 380;

/** How much of the drawing's lower edge the sheet of a phone lies over, px; 0 where the panel stands beside it. */
export function coveredPx(): number {
  if (!matchMedia('(max-width: 699px)').matches) return 0;
  const stop = screen.getState().sheetStop;
  if (stop === 'half') return Math.min(innerHeight * HALF, MOST_HALF_PX) - BAR_PX;
  return stop === 'full' ? innerHeight - BENCH_PX - STRIP_PX - BAR_PX : 0;
}
