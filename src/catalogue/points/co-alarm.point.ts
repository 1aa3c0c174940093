import { definePoint } from '../define-point.ts';
import { choiceField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceMiddle, faceRing, planMiddle, planRing } from '../symbol-parts.ts';

const fields = [choiceField('on', 'Fixed to', { wall: 'wall', ceiling: 'ceiling', shelf: 'shelf' })];

export default definePoint({
  id: 'co-alarm',
  version: 1,
  ...spoken('Carbon monoxide alarm', fields),
  letter: 'CO',
  group: 'electrical',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'wallAlarm',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 120, depthMm: 40, heightMm: 80 },
  connections: () => [],
  defaults: { on: null },
  planSymbol: (s) => [planRing(s), planMiddle(s, 'CO')],
  faceSymbol: (s) => [faceRing(s), faceMiddle(s, 'CO')],
});
