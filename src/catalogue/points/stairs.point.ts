import { definePoint, type Size, type SymbolPart } from '../define-point.ts';
import { choiceField, numberField, yesNoField } from '../field-specs.ts';
import { spoken } from '../say-point.ts';
import { faceBox, line, planFrame } from '../symbol-parts.ts';

const fields = [
  yesNoField('escapeRoute', 'Part of a protected way out'),
  choiceField('under', 'Under it', { open: 'open', cupboard: 'cupboard', closed: 'closed in' }),
  yesNoField('lining', 'Half-hour fire lining and door under it'),
  numberField('steps', 'Steps', '', { min: 1, max: 40 }),
];

const TREADS = 12;

/** Treads across, and a line up the middle with its head at the top. */
function flight({ widthMm, depthMm }: Size): SymbolPart[] {
  const treads = Array.from({ length: TREADS - 1 }, (_, i) => (depthMm * (i + 1)) / TREADS);
  const [foot, head] = [depthMm * 0.06, depthMm * 0.94];
  const barb = Math.min(widthMm, depthMm) * 0.14;
  return [
    ...treads.map((y) => line(-widthMm / 2, y, widthMm / 2, y)),
    line(0, foot, 0, head),
    line(-barb, head - barb, 0, head),
    line(barb, head - barb, 0, head),
  ];
}

/** A flight of stairs, drawn from its foot up. */
export default definePoint({
  id: 'stairs',
  version: 1,
  ...spoken('Stairs', fields),
  letter: 'SR',
  group: 'other',
  role: {},
  hostedOnWall: false,
  assumedHeight: 'floor',
  // Size of the drawn box: common practice, no source.
  size: { widthMm: 850, depthMm: 2600, heightMm: 2600 },
  connections: () => [],
  defaults: { escapeRoute: null, under: null },
  planSymbol: (s) => [...planFrame(s), ...flight(s)],
  faceSymbol: (s) => [faceBox(s), line(-s.widthMm / 2, 0, s.widthMm / 2, s.heightMm)],
});
