import { defineService } from '../define-service.ts';

export default defineService({
  id: 'condensate',
  label: 'Condensate',
  tag: 'K',
  style: 'condensate',
  system: 'condensate',
  runsDownhill: true,
  defaultTube: { kind: 'plastic-overflow', size: '21.5' },
  defaultJoining: 'solvent',
  order: 80,
});
