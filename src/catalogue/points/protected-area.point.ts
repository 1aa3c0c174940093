import { definePoint } from '../define-point.ts';
import { choiceField, textField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, faceMiddle, line, planFrame, planMiddle } from '../symbol-parts.ts';

const fields = [
  choiceField('what', 'What it is', {
    stair: 'protected stair',
    lobby: 'protected lobby',
    corridor: 'protected corridor',
    shaft: 'protected shaft',
  }),
  textField('said', 'Who said so', 'Fire strategy, landlord, building control.'),
];

/** Part of the way out of a building that is kept from fire, drawn by its floor. */
export default definePoint({
  id: 'protected-area',
  version: 1,
  ...spoken('Protected area', fields),
  letter: 'PA',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 1500, depthMm: 1500, heightMm: 2400 },
  connections: () => [],
  defaults: { what: null, said: '' },
  planSymbol: (s) => {
    const cut = Math.min(s.widthMm, s.depthMm) / 6;
    return [
      ...planFrame(s),
      line(-s.widthMm / 2, cut, -s.widthMm / 2 + cut, 0),
      line(s.widthMm / 2 - cut, 0, s.widthMm / 2, cut),
      line(-s.widthMm / 2, s.depthMm - cut, -s.widthMm / 2 + cut, s.depthMm),
      line(s.widthMm / 2 - cut, s.depthMm, s.widthMm / 2, s.depthMm - cut),
      planMiddle(s, 'PA'),
    ];
  },
  faceSymbol: (s) => [faceBox(s), faceMiddle(s, 'PA')],
});
