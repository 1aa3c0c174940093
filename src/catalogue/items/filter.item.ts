import { defineItem } from '../define-item.ts';
import { numberField } from '../field-specs.ts';
import { boxMark } from '../item-marks.ts';

export default defineItem({
  id: 'filter',
  label: 'Filter',
  mark: boxMark('F'),
  services: ['heatingFlow', 'heatingReturn'],
  stands: ['inline'],
  equivalentLength: 'filter',
  listName: 'heating filter',
  fields: [numberField('kv', 'Flow factor Kv', 'm3/h at 1 bar', { max: 100, help: 'From its sheet.' })],
  defaults: { kv: null },
});
