import { defineItem } from '../define-item.ts';
import { line } from '../symbol-parts.ts';

export default defineItem({
  id: 'strainer',
  label: 'Strainer',
  mark: [line(-1.8, 0, 1.8, 0), line(0, 0, 1.4, -1.8), line(0.9, -2, 1.9, -1.6)],
  services: ['hot', 'cold', 'preheated', 'balancedCold', 'heatingFlow', 'heatingReturn'],
  stands: ['inline'],
  equivalentLength: 'strainer',
  listName: 'strainer',
  fields: [],
  defaults: {},
});
