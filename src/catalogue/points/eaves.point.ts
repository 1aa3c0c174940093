import { definePoint } from '../define-point.ts';
import { choiceField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planFrame } from '../symbol-parts.ts';

const fields = [
  choiceField('what', 'What it is', { eaves: 'eaves', balcony: 'balcony', carPort: 'roof of a car port' }),
  numberField('openSides', 'Open sides below a car port', '', { max: 4 }),
  choiceField('madeOf', 'Soffit', { plastic: 'plastic', timber: 'timber', board: 'board', open: 'open' }),
  yesNoField('vented', 'Ventilated'),
];

/** Where a roof comes out over a wall. Its height is that of the soffit, its depth how far it comes out. */
export default definePoint({
  id: 'eaves',
  version: 1,
  ...spoken('Eaves', fields),
  letter: 'EV',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'ceiling',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 3000, depthMm: 300, heightMm: 200 },
  connections: () => [],
  defaults: { madeOf: null, vented: null },
  planSymbol: (s) => [...planFrame(s), line(-s.widthMm / 2, s.depthMm * 0.9, s.widthMm / 2, s.depthMm * 0.9)],
  faceSymbol: (s) => [faceBox(s), line(-s.widthMm / 2, s.heightMm * 0.15, s.widthMm / 2, s.heightMm * 0.15)],
});
