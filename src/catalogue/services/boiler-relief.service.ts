import { defineService } from '../define-service.ts';

export default defineService({
  id: 'boilerRelief',
  label: 'Boiler relief',
  tag: 'RV',
  style: 'discharge',
  system: 'discharge',
  runsDownhill: true,
  defaultTube: { kind: 'copper', size: '15x0.7' },
  defaultJoining: 'compression',
  order: 100,
});
