import { defineService } from '../define-service.ts';

export default defineService({
  id: 'gas',
  label: 'Gas',
  tag: 'G',
  style: 'gas',
  system: 'gas',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '22x0.9' },
  defaultJoining: 'endFeed',
  order: 10,
});
