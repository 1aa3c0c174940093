import { allSizes, defineFitting, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

/** Tube to an inside thread of an appliance. Sizes: tube, thread. */
export default defineFitting({
  id: 'male-iron',
  degrees: 0,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} male iron adaptor`,
  size: allSizes,
  ends: (ask) => [...takes(ask, ask.sizes[0]), { form: 'thread-out', size: ask.sizes[1] ?? '', joining: 'threaded' }],
});
