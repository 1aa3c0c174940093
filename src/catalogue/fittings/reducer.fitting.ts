import { allSizes, defineFitting, goesIn, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

/** A fitting reducer: its plain end sits in the socket of the larger fitting. Sizes: larger, smaller. */
export default defineFitting({
  id: 'reducer',
  degrees: 0,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} reducer`,
  size: allSizes,
  ends: (ask) => [...goesIn(ask, ask.sizes[0]), ...takes(ask, ask.sizes[1])],
});
