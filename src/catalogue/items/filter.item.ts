import { defineItem } from '../define-item.ts';
import { boxMark } from '../item-marks.ts';

export default defineItem({
  id: 'filter',
  label: 'Filter',
  mark: boxMark('F'),
  services: ['heatingFlow', 'heatingReturn'],
  stands: ['inline'],
  equivalentLength: 'filter',
  listName: 'heating filter',
  fields: [],
  defaults: {},
});
