import { defineItem } from '../define-item.ts';
import { barMark } from '../item-marks.ts';

export default defineItem({
  id: 'stop-end',
  label: 'Stop end',
  mark: [barMark(0)],
  services: [],
  stands: ['end'],
  equivalentLength: null,
  listName: 'stop end',
  fields: [],
  defaults: {},
});
