import { definePoint } from '../define-point.ts';
import { textField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { letter, line, planMiddle, planRing } from '../symbol-parts.ts';
import { tail } from '../tail.ts';

const fields = [
  textField('serves', 'Serves', 'Name of the vessel or boiler, where the pipe to it is not drawn.'),
  yesNoField('seen', 'In sight of who lives there'),
];

export default definePoint({
  id: 'tundish',
  version: 1,
  ...spoken('Tundish', fields),
  letter: 'TD',
  group: 'drain',
  role: { in: 'end', out: 'source' },
  hostedOnWall: true,
  assumedHeight: 'tundish',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 80, depthMm: 60, heightMm: 120 },
  connections: (s) => [
    tail('in', 'discharge', 'From the valve', '15', [0, s.depthMm / 2, s.heightMm], 'up'),
    tail('out', 'discharge', 'To outside', '22', [0, s.depthMm / 2, 0], 'down'),
  ],
  defaults: { serves: '', seen: null },
  planSymbol: (s) => [planRing(s), planMiddle(s, 'TD')],
  faceSymbol: (s) => [
    line(-s.widthMm / 2, s.heightMm, 0, s.heightMm * 0.4),
    line(s.widthMm / 2, s.heightMm, 0, s.heightMm * 0.4),
    line(0, s.heightMm * 0.4, 0, 0),
    letter(0, s.heightMm * 0.75, 'TD'),
  ],
});
