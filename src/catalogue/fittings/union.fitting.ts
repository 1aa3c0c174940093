import { defineFitting, oneSize, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

export default defineFitting({
  id: 'union',
  degrees: 0,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} union`,
  size: oneSize,
  ends: (ask) => [...takes(ask, ask.sizes[0]), ...takes(ask, ask.sizes[0])],
});
