import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'old-plastic',
  label: 'Old plastic',
  sizesFromTable: 'tube-old-plastic',
  onlyExisting: true,
  joinings: ['compression', 'pushFit', 'solvent'],
  services: ['heatingFlow', 'heatingReturn', 'hot', 'cold', 'preheated', 'balancedCold'],
});
