import type { Point } from '../../plan/records/pipework.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';

const EDGE: LineStyle = { ink: 'rule', pen: 0.25, dash: [0.4, 0.8], fit: false };
const ANGLE: LineStyle = { ink: 'rule', pen: 0.25, dash: [], fit: false };
/** Legs of the two corner angles, and how far inside the edge they stand. */
const ANGLE_MM = 60;
const INSET_MM = 25;

const told = (point: Point, field: string): number => {
  const value = point.fields[field];
  return typeof value === 'number' && value > 0 ? value : 0;
};

/** Room told to be kept clear round a point, as seen from above or on its wall; nothing where nothing was told. */
export function keepClear(point: Point, from: 'above' | 'front', at: (x: number, y: number) => Vec): Item[] {
  const sides = told(point, 'clearSidesMm');
  const { widthMm, depthMm, heightMm } = point.size;
  const [low, high] =
    from === 'above'
      ? [0, told(point, 'clearFrontMm') > 0 ? depthMm + told(point, 'clearFrontMm') : 0]
      : [-told(point, 'clearBelowMm'), heightMm + told(point, 'clearAboveMm')];
  const grows = sides > 0 || (from === 'above' ? high > 0 : low < 0 || high > heightMm);
  if (!grows) return [];
  const [left, right, top] = [-widthMm / 2 - sides, widthMm / 2 + sides, high > 0 ? high : depthMm];
  const angle = (x: number, y: number, sx: number, sy: number): Item => ({
    t: 'line',
    pts: [at(x + sx * ANGLE_MM, y), at(x, y), at(x, y + sy * ANGLE_MM)],
    style: ANGLE,
  });
  return [
    { t: 'line', pts: [at(left, low), at(right, low), at(right, top), at(left, top)], closed: true, style: EDGE },
    angle(left + INSET_MM, top - INSET_MM, 1, -1),
    angle(right - INSET_MM, low + INSET_MM, -1, 1),
  ];
}
