import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'waste',
  label: 'Plastic waste pipe',
  sizesFromTable: 'tube-waste',
  rows: ['32', '40'],
  joinings: ['solvent', 'pushFit', 'compression'],
  services: ['condensate'],
});
