import { defineItem } from '../define-item.ts';
import { barMark } from '../item-marks.ts';

export default defineItem({
  id: 'flue-support',
  label: 'Flue support',
  mark: [barMark(-0.3), barMark(0.3)],
  services: ['flue'],
  stands: ['inline'],
  equivalentLength: null,
  listName: 'flue bracket',
  fields: [],
  defaults: {},
});
