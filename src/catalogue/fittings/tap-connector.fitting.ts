import { allSizes, defineFitting, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

/** Tube to the flat face and nut of a tap or valve. Sizes: tube, thread. */
export default defineFitting({
  id: 'tap-connector',
  degrees: 0,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} straight tap connector`,
  size: allSizes,
  ends: (ask) => [...takes(ask, ask.sizes[0]), { form: 'face', size: ask.sizes[1] ?? '', joining: 'threaded' }],
});
