import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'csst',
  label: 'Corrugated stainless',
  sizesFromTable: 'tube-csst',

  joinings: ['compression'],
  services: ['gas'],
});
