import { defineService } from '../define-service.ts';

export default defineService({
  id: 'heatingFlow',
  label: 'Heating flow',
  tag: 'HF',
  style: 'heatingFlow',
  system: 'heating',
  runsDownhill: false,
  defaultTube: { kind: 'copper', size: '22x0.9' },
  defaultJoining: 'endFeed',
  order: 20,
});
