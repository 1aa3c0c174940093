import { defineService } from '../define-service.ts';

export default defineService({
  id: 'hot',
  label: 'Hot',
  tag: 'H',
  style: 'hot',
  system: 'hot',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '15x0.7' },
  defaultJoining: 'endFeed',
  order: 40,
});
