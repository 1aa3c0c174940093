import { definePoint } from '../define-point.ts';
import { textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { round } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  yesNoField('laid', 'Laid already'),
  textField('before', 'Must be laid before', 'The pour, the day, and who owns it.'),
];

/** A branch of the foul drain that comes up through a floor still to be cast. */
export default definePoint({
  id: 'condensate-drain',
  version: 1,
  ...spoken('Foul branch to be laid', fields),
  letter: 'FB',
  group: 'drain',
  role: { condensate: 'end', boilerRelief: 'end' },
  hostedOnWall: false,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 110, depthMm: 110, heightMm: 150 },
  connections: (s) => [tail('in', 'condensate', 'Trapped inlet', '40', [0, s.depthMm / 2, s.heightMm], 'up')],
  defaults: { laid: null, before: '' },
  ...round('FB'),
});
