import type { Medium } from '../look/tokens.ts';
import { SCREEN, SIZE } from '../look/tokens.ts';
import { baselineDrop } from '../text/measure.ts';
import type { MarkPen } from './mark-pen.ts';
import type { Prim } from './prim.ts';

/** Across, in paper mm: 26 px on a screen, 5 mm on a sheet. */
export const findingMm = (medium: Medium): number => (medium === 'sheet' ? 5 : SIZE.mark / SCREEN.pxPerMm);

const TILT = Math.PI / 8;

/** The mark of an outcome with its letter and number, upright whatever way the drawing is turned. */
export function findingPrims(m: MarkPen, outcome: string, text: string, medium: Medium): Prim[] {
  const across = findingMm(medium);
  const r = across / 2;
  const look = m.look.mark(outcome);
  const stroke = m.stroke(look.line, 0.45);
  const say = (drop: number, size: number): Prim => ({
    p: 'text',
    x: m.at[0],
    y: m.at[1] + (baselineDrop(size) + drop) * m.unit,
    text,
    size: size * m.unit,
    weight: 600,
    align: 'middle',
    ink: look.letter,
    turnDeg: 0,
  });
  const big = across * 0.42;
  if (outcome === 'stop') {
    const pts = Array.from({ length: 8 }, (_, i): [number, number] => [
      Math.cos(TILT + (i * Math.PI) / 4) * r,
      Math.sin(TILT + (i * Math.PI) / 4) * r,
    ]);
    return [m.path(pts, { closed: true, fill: look.fill }), say(0, big)];
  }
  if (outcome === 'check') {
    const pts: [number, number][] = [
      [-r * 1.12, -r * 0.92],
      [r * 1.12, -r * 0.92],
      [0, r * 1.02],
    ];
    return [
      m.path(pts, { closed: true, fill: look.fill, stroke: { ...stroke, join: 'round' } }),
      say(r * 0.34, across * 0.35),
    ];
  }
  if (outcome === 'note') return [m.circle(0, 0, r * 0.94, { fill: look.fill, stroke }), say(0, big)];
  const h = r * 0.88;
  const square: [number, number][] = [
    [-h, -h],
    [h, -h],
    [h, h],
    [-h, h],
  ];
  return [
    m.path(square, { closed: true, fill: look.fill, stroke: m.stroke(look.line, 0.45, [0.9, 0.6]) }),
    say(0, big),
  ];
}
