import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'copper',
  label: 'Copper',
  sizesFromTable: 'tube-copper',

  joinings: ['endFeed', 'solderRing', 'compression', 'press', 'pushFit'],
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
