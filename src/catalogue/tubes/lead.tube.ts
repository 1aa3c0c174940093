import { defineTube } from '../define-tube.ts';

export default defineTube({
  id: 'lead',
  label: 'Lead',
  sizesFromTable: 'tube-lead',
  onlyExisting: true,
  joinings: ['compression'],
  services: ['gas', 'cold', 'hot'],
});
