import { defineItem } from '../define-item.ts';
import { barMark } from '../item-marks.ts';

export default defineItem({
  id: 'union',
  label: 'Union',
  mark: [barMark(-0.5), barMark(0.5)],
  services: [],
  stands: ['inline'],
  equivalentLength: null,
  listName: 'union',
  fields: [],
  defaults: {},
});
