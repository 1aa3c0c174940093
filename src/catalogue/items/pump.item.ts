import { defineItem } from '../define-item.ts';
import { numberField, yesNoField } from '../field-specs.ts';
import { line, ring } from '../symbol-parts.ts';

export default defineItem({
  id: 'pump',
  label: 'Pump',
  mark: [ring(0, 0, 1.6), line(-1.1, -1.1, 1.6, 0), line(-1.1, 1.1, 1.6, 0)],
  services: ['heatingFlow', 'heatingReturn', 'hot'],
  stands: ['inline'],
  equivalentLength: null,
  listName: 'circulating pump',
  fields: [
    yesNoField('hasValves', 'Pump valves fitted'),
    numberField('headKPa', 'Head', 'kPa', { max: 150, help: 'At the design flow, from its curve.' }),
  ],
  defaults: { hasValves: null, headKPa: null },
});
