import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'steel',
  label: 'Steel',
  sizesFromTable: 'tube-steel',

  joinings: ['threaded', 'press'],
  services: ['gas', 'heatingFlow', 'heatingReturn'],
});
