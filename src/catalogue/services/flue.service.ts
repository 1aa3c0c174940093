import { defineService } from '../define-service.ts';

export default defineService({
  id: 'flue',
  label: 'Flue',
  tag: 'FL',
  style: 'flue',
  system: 'flue',
  // It falls back to the boiler, against the way its products go: no water is led along it.
  runsDownhill: false,
  defaultTube: { kind: 'flue', size: '60/100' },
  defaultJoining: 'pushFit',
  order: 110,
});
