import { defineService } from '../define-service.ts';

export default defineService({
  id: 'preheated',
  label: 'Preheated',
  tag: 'PH',
  style: 'preheated',
  system: 'hot',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '15x0.7' },
  defaultJoining: 'endFeed',
  order: 60,
});
