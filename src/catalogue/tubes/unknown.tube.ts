import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'unknown',
  label: 'Not known',
  sizesFromTable: null,

  joinings: [],
  services: [],
});
