import { defineItem } from '../define-item.ts';
import { yesNoField } from '../field-specs.ts';
import { leverMark, valveMark } from '../item-marks.ts';

export default defineItem({
  id: 'emergency-control-valve',
  label: 'Emergency control valve',
  mark: [...valveMark, ...leverMark],
  services: ['gas'],
  stands: ['inline'],
  equivalentLength: 'gas-cock',
  listName: 'emergency control valve',
  fields: [
    yesNoField('handle', 'Handle fitted'),
    yesNoField('label', 'Label fixed'),
    yesNoField('turns', 'Turns by hand'),
  ],
  defaults: { handle: null, label: null, turns: null },
});
