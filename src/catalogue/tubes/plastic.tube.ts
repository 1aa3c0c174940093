import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'plastic',
  label: 'Plastic barrier pipe',
  sizesFromTable: 'tube-plastic',

  joinings: ['pushFit', 'press', 'compression'],
  services: ['heatingFlow', 'heatingReturn', 'hot', 'cold', 'preheated', 'balancedCold'],
});
