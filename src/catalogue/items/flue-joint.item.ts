import { defineItem } from '../define-item.ts';
import { barMark } from '../item-marks.ts';

/** Where one straight length goes into the next. Bends are joints by themselves and need no mark. */
export default defineItem({
  id: 'flue-joint',
  label: 'Flue joint',
  mark: [barMark(0)],
  services: ['flue'],
  stands: ['inline'],
  equivalentLength: null,
  listName: 'flue joint seal',
  fields: [],
  defaults: {},
});
