import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'plastic-overflow',
  label: 'Plastic overflow pipe',
  sizesFromTable: 'tube-waste',
  rows: ['21.5'],
  joinings: ['solvent', 'pushFit', 'compression'],
  services: ['condensate'],
});
