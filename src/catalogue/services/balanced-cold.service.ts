import { defineService } from '../define-service.ts';

export default defineService({
  id: 'balancedCold',
  label: 'Balanced cold',
  tag: 'BC',
  style: 'balancedCold',
  system: 'cold',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '15x0.7' },
  defaultJoining: 'endFeed',
  order: 70,
});
