import { defineItem } from '../define-item.ts';
import { yesNoField } from '../field-specs.ts';
import { checkMark } from '../item-marks.ts';
import { ring } from '../symbol-parts.ts';

export default defineItem({
  id: 'filling-loop',
  label: 'Filling loop',
  mark: [...checkMark(-1.3), ...checkMark(1.3), ring(0, 2.2, 0.8)],
  services: ['cold', 'heatingFlow', 'heatingReturn'],
  stands: ['inline', 'end'],
  equivalentLength: null,
  listName: 'filling loop with double check',
  fields: [yesNoField('leftOn', 'Left connected'), yesNoField('doubleCheck', 'Double check valve at it')],
  defaults: { leftOn: null, doubleCheck: null },
});
