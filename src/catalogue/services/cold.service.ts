import { defineService } from '../define-service.ts';

export default defineService({
  id: 'cold',
  label: 'Cold',
  tag: 'C',
  style: 'cold',
  system: 'cold',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '15x0.7' },
  defaultJoining: 'endFeed',
  order: 50,
});
