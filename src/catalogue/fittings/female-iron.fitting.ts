import { allSizes, defineFitting, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

/** Tube to an outside thread of an appliance. Sizes: tube, thread. */
export default defineFitting({
  id: 'female-iron',
  degrees: 0,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} female iron adaptor`,
  size: allSizes,
  ends: (ask) => [...takes(ask, ask.sizes[0]), { form: 'thread-in', size: ask.sizes[1] ?? '', joining: 'threaded' }],
});
