import { defineItem } from '../define-item.ts';
import { tailMark, valveMark } from '../item-marks.ts';

export default defineItem({
  id: 'drain-cock',
  label: 'Drain cock',
  mark: [...valveMark.slice(0, 2), ...tailMark],
  services: ['heatingFlow', 'heatingReturn', 'hot', 'cold', 'preheated', 'balancedCold'],
  stands: ['inline', 'end'],
  equivalentLength: null,
  listName: 'drain cock',
  fields: [],
  defaults: {},
});
