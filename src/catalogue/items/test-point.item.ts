import { defineItem } from '../define-item.ts';
import { line, ring } from '../symbol-parts.ts';

export default defineItem({
  id: 'test-point',
  label: 'Test point',
  mark: [line(0, 0, 0, 2), ring(0, 2.6, 0.6, true)],
  services: ['gas'],
  stands: ['inline', 'end'],
  equivalentLength: null,
  listName: 'test point',
  fields: [],
  defaults: {},
});
