import { defineItem } from '../define-item.ts';
import { yesNoField } from '../field-specs.ts';
import { checkMark } from '../item-marks.ts';

export default defineItem({
  id: 'double-check',
  label: 'Double check valve',
  mark: [...checkMark(-1.3), ...checkMark(1.3)],
  services: ['hot', 'cold', 'preheated', 'balancedCold'],
  stands: ['inline'],
  equivalentLength: 'double-check',
  listName: 'double check valve',
  fields: [yesNoField('roomAfter', 'Room for expansion after it')],
  defaults: { roomAfter: null },
});
