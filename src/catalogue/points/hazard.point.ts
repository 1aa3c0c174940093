import { definePoint, type Size, type SymbolPart } from '../define-point.ts';
import { choiceField, textField } from '../field-specs.ts';
import { hazards } from '../hazards.ts';
import { spoken } from '../say-point.ts';
import { line, ring } from '../symbol-parts.ts';

const fields = [
  choiceField('what', 'What it is', Object.fromEntries(hazards.map((h) => [h.id, h.label]))),
  textField('where', 'Where exactly'),
  choiceField('tested', 'Looked into', {
    no: 'not yet',
    asked: 'asked for',
    found: 'confirmed',
    clear: 'tested, is not there',
  }),
];

/** A triangle that stands on its base, with a stroke and a dot in it: look out. */
function triangle(w: number, h: number): SymbolPart[] {
  const least = Math.min(w, h);
  return [
    line(-w / 2, 0, w / 2, 0),
    line(w / 2, 0, 0, h),
    line(0, h, -w / 2, 0),
    line(0, h * 0.3, 0, h * 0.66),
    ring(0, h * 0.17, least * 0.045, true),
  ];
}

function upright(part: SymbolPart, h: number): SymbolPart {
  if (part.draw === 'line') return line(part.from[0], h - part.from[1], part.to[0], h - part.to[1]);
  return part.draw === 'ring' ? ring(part.x, h - part.y, part.r, part.fill) : part;
}

export default definePoint({
  id: 'hazard',
  version: 1,
  ...spoken('Hazard', fields),
  letter: '',
  group: 'other',
  role: {},
  hostedOnWall: true,
  assumedHeight: 'floor',
  // Size of the drawn triangle on a plan at the usual scale, not of what it warns of.
  size: { widthMm: 320, depthMm: 280, heightMm: 280 },
  connections: () => [],
  defaults: { what: null, where: '', tested: null },
  // From above the depth runs down the sheet: the triangle stands upright on it.
  planSymbol: (s: Size) => triangle(s.widthMm, s.depthMm).map((part) => upright(part, s.depthMm)),
  faceSymbol: (s: Size) => triangle(s.widthMm, s.heightMm),
});
