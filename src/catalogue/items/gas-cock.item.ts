import { defineItem } from '../define-item.ts';
import { leverMark, valveMark } from '../item-marks.ts';

export default defineItem({
  id: 'gas-cock',
  label: 'Gas cock',
  mark: [...valveMark, ...leverMark],
  services: ['gas'],
  stands: ['inline', 'end'],
  equivalentLength: 'gas-cock',
  listName: 'gas service valve',
  fields: [],
  defaults: {},
});
