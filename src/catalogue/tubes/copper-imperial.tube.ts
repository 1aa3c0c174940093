import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'copper-imperial',
  label: 'Copper, inch sizes',
  sizesFromTable: 'tube-copper-imperial',
  onlyExisting: true,
  joinings: ['compression', 'endFeed'],
  services: [
    'gas',
    'heatingFlow',
    'heatingReturn',
    'hot',
    'cold',
    'preheated',
    'balancedCold',
    'discharge',
    'boilerRelief',
  ],
});
