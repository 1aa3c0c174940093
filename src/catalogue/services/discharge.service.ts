import { defineService } from '../define-service.ts';

export default defineService({
  id: 'discharge',
  label: 'Safety discharge',
  tag: 'D2',
  style: 'discharge',
  system: 'discharge',
  runsDownhill: true,
  defaultTube: { kind: 'copper', size: '22x0.9' },
  defaultJoining: 'compression',
  order: 90,
});
