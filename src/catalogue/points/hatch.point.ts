import { definePoint } from '../define-point.ts';
import { choiceField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, frame, line, planFrame, planMiddle } from '../symbol-parts.ts';

const fields = [
  choiceField('leadsTo', 'Leads to', {
    loft: 'loft',
    floor: 'floor void',
    ceiling: 'ceiling void',
    duct: 'duct or box',
  }),
  yesNoField('ladder', 'Fixed ladder'),
  yesNoField('guard', 'Guard round it'),
  yesNoField('light', 'Fixed light up there'),
  yesNoField('boarded', 'Boarded from here to the boiler'),
  yesNoField('vapourOpen', 'Roof with a vapour-open membrane and no vents'),
];

/** An opening to look or climb through. Its size is the clear one. */
export default definePoint({
  id: 'hatch',
  version: 1,
  ...spoken('Hatch', fields),
  letter: 'HT',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'ceiling',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 600, depthMm: 600, heightMm: 50 },
  connections: () => [],
  defaults: { leadsTo: null, ladder: null },
  planSymbol: (s) => [
    ...planFrame(s),
    ...frame(-s.widthMm * 0.42, s.depthMm * 0.08, s.widthMm * 0.84, s.depthMm * 0.84),
    line(-s.widthMm * 0.42, s.depthMm * 0.08, s.widthMm * 0.42, s.depthMm * 0.92),
    planMiddle(s, 'HT'),
  ],
  faceSymbol: (s) => [faceBox(s)],
});
