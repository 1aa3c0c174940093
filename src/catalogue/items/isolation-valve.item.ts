import { defineItem } from '../define-item.ts';
import { leverMark, valveMark } from '../item-marks.ts';

export default defineItem({
  id: 'isolation-valve',
  label: 'Isolation valve',
  mark: [...valveMark, ...leverMark],
  services: ['heatingFlow', 'heatingReturn', 'hot', 'cold', 'preheated', 'balancedCold'],
  stands: ['inline'],
  equivalentLength: 'straight-valve',
  listName: 'full bore lever valve',
  fields: [],
  defaults: {},
});
