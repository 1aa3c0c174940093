import type { Joists } from '../../plan/records/building.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { type Across, rectangle } from './face-wall.ts';

const SEEN: LineStyle = { ink: 'batten', pen: 0.2, dash: [], fit: false };
const ASSUMED: LineStyle = { ink: 'batten', pen: 0.2, dash: [0.9, 0.6], fit: false };

/** Chords and flanges take so much of the depth at each edge, a web so much of the breadth. */
const CHORD = 0.2;
const WEB = 0.2;

export const joistStyle = (joists: Joists): LineStyle =>
  joists.assumed?.includes('first') || joists.assumed?.includes('centresMm') ? ASSUMED : SEEN;

/** A joist cut through: a box with both diagonals; one that nobody has placed is hollow. */
export function joistBox(a: Across, low: number, high: number, style: LineStyle = SEEN): Item[] {
  if (style === ASSUMED) return [{ t: 'area', rings: [rectangle(a, low, high)], fill: 'paper', edge: style }];
  const line = (p: Vec, q: Vec): Item => ({ t: 'line', pts: [p, q], style });
  return [
    { t: 'area', rings: [rectangle(a, low, high)], fill: 'paper', edge: style },
    line([a.from, low], [a.upTo, high]),
    line([a.from, high], [a.upTo, low]),
  ];
}

/** A joist cut through, by its kind: solid timber, flanges with a web between, chords with slants between. */
export function joistSection(kind: Joists['kind'], a: Across, low: number, high: number, style: LineStyle): Item[] {
  if (kind !== 'engineered' && kind !== 'metalWeb') return joistBox(a, low, high, style);
  const chord = (high - low) * CHORD;
  const [middle, half] = [(a.from + a.upTo) / 2, ((a.upTo - a.from) * WEB) / 2];
  const web: Item[] =
    kind === 'engineered'
      ? [
          {
            t: 'area',
            rings: [rectangle({ from: middle - half, upTo: middle + half }, low + chord, high - chord)],
            fill: 'paper',
            edge: style,
          },
        ]
      : [
          {
            t: 'line',
            pts: [
              [a.from, low + chord],
              [a.upTo, (low + high) / 2],
              [a.from, high - chord],
            ],
            style,
          },
        ];
  return [...web, ...joistBox(a, low, low + chord, style), ...joistBox(a, high - chord, high, style)];
}
