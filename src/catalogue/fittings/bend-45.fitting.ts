import { defineFitting, oneSize } from '../define-fitting.ts';

export default defineFitting({
  id: 'bend45',
  degrees: 45,
  bought: false,
  label: () => '45 bend pulled in the tube',
  size: oneSize,
  ends: () => [],
});
