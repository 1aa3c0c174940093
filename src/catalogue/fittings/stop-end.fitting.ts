import { defineFitting, oneSize, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

export default defineFitting({
  id: 'stop-end',
  degrees: null,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} stop end`,
  size: oneSize,
  ends: (ask) => takes(ask, ask.sizes[0]),
});
