import { defineTube } from '../define-tube.ts';

/** One pipe in another, both for the products and for the air: each length has its own joint at one end. */
export default defineTube({
  id: 'flue',
  label: 'Flue pipe',
  sizesFromTable: 'tube-flue',
  joinings: ['pushFit'],
  services: ['flue'],
  fittingsSaid: 'flue',
});
