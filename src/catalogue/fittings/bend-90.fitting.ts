import { defineFitting, oneSize } from '../define-fitting.ts';

export default defineFitting({
  id: 'bend90',
  degrees: 90,
  bought: false,
  label: () => 'bend pulled in the tube',
  size: oneSize,
  ends: () => [],
});
