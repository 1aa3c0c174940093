import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'microbore',
  label: 'Microbore copper',
  sizesFromTable: 'tube-microbore',
  onlyExisting: true,
  joinings: ['compression', 'endFeed'],
  services: ['gas', 'heatingFlow', 'heatingReturn'],
});
