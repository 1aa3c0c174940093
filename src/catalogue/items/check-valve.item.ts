import { defineItem } from '../define-item.ts';
import { yesNoField } from '../field-specs.ts';
import { checkMark } from '../item-marks.ts';

export default defineItem({
  id: 'check-valve',
  label: 'Check valve',
  mark: checkMark(0),
  services: ['hot', 'cold', 'preheated', 'balancedCold'],
  stands: ['inline'],
  equivalentLength: 'check-valve',
  listName: 'single check valve',
  fields: [yesNoField('roomAfter', 'Room for expansion after it')],
  defaults: { roomAfter: null },
});
