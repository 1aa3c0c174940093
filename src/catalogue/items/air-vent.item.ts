import { defineItem } from '../define-item.ts';
import { yesNoField } from '../field-specs.ts';
import { line, ring } from '../symbol-parts.ts';

export default defineItem({
  id: 'air-vent',
  label: 'Air vent',
  mark: [line(0, 0, 0, 2.2), ring(0, 3, 0.8)],
  services: ['heatingFlow', 'heatingReturn', 'hot', 'cold', 'preheated', 'balancedCold'],
  stands: ['inline', 'end'],
  equivalentLength: null,
  listName: 'air vent',
  fields: [yesNoField('automatic', 'Automatic')],
  defaults: { automatic: null },
});
