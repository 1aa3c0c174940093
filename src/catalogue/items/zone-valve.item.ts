import { defineItem } from '../define-item.ts';
import { numberField } from '../field-specs.ts';
import { valveMark } from '../item-marks.ts';
import { line } from '../symbol-parts.ts';

export default defineItem({
  id: 'zone-valve',
  label: 'Zone valve',
  mark: [...valveMark, line(0, 0, 0, 2), line(-0.9, 2, 0.9, 2)],
  services: ['heatingFlow', 'heatingReturn'],
  stands: ['inline'],
  equivalentLength: 'straight-valve',
  listName: 'zone valve',
  fields: [numberField('kv', 'Flow factor Kv', 'm3/h at 1 bar', { max: 100, help: 'From its sheet.' })],
  defaults: { kv: null },
});
