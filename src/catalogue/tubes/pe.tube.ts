import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'pe',
  label: 'Polyethylene',
  sizesFromTable: 'tube-pe',

  joinings: ['electrofusion', 'compression'],
  services: ['gas', 'cold'],
});
