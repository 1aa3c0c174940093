import { defineFitting, oneSize, takes } from '../define-fitting.ts';
import { JOINING_WORDS } from '../joining-words.ts';

export default defineFitting({
  id: 'elbow90',
  degrees: 90,
  bought: true,
  label: (ask) => `${JOINING_WORDS[ask.joining]} elbow`,
  size: oneSize,
  ends: (ask) => [...takes(ask, ask.sizes[0]), ...takes(ask, ask.sizes[0])],
});
