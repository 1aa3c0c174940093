import { defineItem } from '../define-item.ts';
import { numberField } from '../field-specs.ts';
import { valveMark } from '../item-marks.ts';
import { ring } from '../symbol-parts.ts';

export default defineItem({
  id: 'pressure-reducer',
  label: 'Pressure reducing valve',
  mark: [...valveMark, ring(0, 2, 0.7)],
  services: ['cold'],
  stands: ['inline'],
  equivalentLength: 'pressure-reducer',
  listName: 'pressure reducing valve',
  fields: [numberField('setBar', 'Set to', 'bar', { max: 10 })],
  defaults: { setBar: null },
});
