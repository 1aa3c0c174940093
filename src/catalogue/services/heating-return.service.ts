import { defineService } from '../define-service.ts';

export default defineService({
  id: 'heatingReturn',
  label: 'Heating return',
  tag: 'HR',
  style: 'heatingReturn',
  system: 'heating',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '22x0.9' },
  defaultJoining: 'endFeed',
  order: 30,
});
