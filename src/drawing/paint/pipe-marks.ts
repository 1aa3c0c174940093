import { PEN } from '../look/tokens.ts';
import type { MarkPen } from './mark-pen.ts';
import type { Prim } from './prim.ts';

const riser = (m: MarkPen): Prim =>
  m.circle(0, 0, PEN.riseRadius, { fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) });

/** Marks in and at pipes by name. */
export const PIPE_MARKS: Readonly<Record<string, (m: MarkPen, size: number) => Prim[]>> = {
  /** Comes up to the reader. */
  rise: (m) => [riser(m), m.circle(0, 0, PEN.riseDot, { fill: m.ink })],
  /** Goes away from the reader. */
  drop: (m) => {
    const r = PEN.riseRadius * Math.SQRT1_2;
    return [
      riser(m),
      m.path(
        [
          [-r, -r],
          [r, r],
        ],
        { stroke: m.stroke(m.ink, PEN.symbol) },
      ),
    ];
  },
  tee: (m) => [m.circle(0, 0, PEN.teeDotRadius, { fill: m.ink })],
  /** An end that leads to nothing yet. */
  openEnd: (m) => [
    m.path(
      [
        [0, -1.4],
        [0, 1.4],
      ],
      { stroke: m.stroke(m.ink, PEN.symbol) },
    ),
  ],
  /** Broad end to the left, narrow to the right. */
  reducer: (m) => [
    m.path(
      [
        [-1.5, 1.1],
        [-1.5, -1.1],
        [1.5, -0.5],
        [1.5, 0.5],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  /** High end to the left: a slim solid wedge above the line. */
  wedge: (m) => [
    m.path(
      [
        [-5, 1.3],
        [-5, 3.1],
        [5, 1.3],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  /** The same with the line to the other side, for lines told from right to left. */
  wedgeUnder: (m) => [
    m.path(
      [
        [-5, -1.3],
        [-5, -3.1],
        [5, -1.3],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  /** End of a measured line. */
  slant: (m) => {
    const h = PEN.dimStrokeHalf;
    return [
      m.path(
        [
          [-h, -h],
          [h, h],
        ],
        { stroke: m.stroke(m.ink, PEN.dimensionStroke) },
      ),
    ];
  },
  dot: (m) => [m.circle(0, 0, 0.5, { fill: m.ink })],
  /** The spot of a clash. */
  spot: (m, size) => [m.circle(0, 0, size || 3, { stroke: m.stroke(m.ink, 0.6) })],
  /** A camera: a photo was taken of this. */
  photo: (m) => [
    m.path(
      [
        [-2.1, -1.4],
        [-2.1, 1.1],
        [-1, 1.1],
        [-0.6, 1.7],
        [0.6, 1.7],
        [1, 1.1],
        [2.1, 1.1],
        [2.1, -1.4],
      ],
      { closed: true, fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) },
    ),
    m.circle(0, -0.2, 0.8, { stroke: m.stroke(m.ink, PEN.symbol) }),
  ],
  /** Corner of something chosen. */
  handle: (m) => [m.circle(0, 0, 1.76, { fill: m.look.paper, stroke: m.stroke(m.ink, 0.7) })],
  /** A plumb bob that points north. */
  north: (m) => [
    m.path(
      [
        [0, 0],
        [0, -5],
      ],
      { stroke: m.stroke(m.ink, 0.35) },
    ),
    m.path(
      [
        [-1.6, -5],
        [1.6, -5],
      ],
      { stroke: m.stroke(m.ink, 0.35) },
    ),
    m.path(
      [
        [-1.5, 0],
        [0, 3.6],
        [1.5, 0],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  /** A level from above: a cross where it was taken. */
  level: (m) => [
    m.circle(0, 0, 1, { stroke: m.stroke(m.ink, PEN.opening) }),
    ...[0, 90].map((deg) => {
      const [x, y] = deg === 0 ? [1.7, 0] : [0, 1.7];
      return m.path(
        [
          [-x, -y],
          [x, y],
        ],
        { stroke: m.stroke(m.ink, PEN.opening) },
      );
    }),
  ],
  /** A level seen from the side: an open triangle that stands on its line with its tip. */
  levelOn: (m) => [
    m.path(
      [
        [0, 0],
        [-1.5, 2.2],
        [1.5, 2.2],
      ],
      { closed: true, fill: m.look.paper, stroke: m.stroke(m.ink, PEN.opening) },
    ),
  ],
  /** Where the next place would be put. */
  aim: (m) => [
    m.circle(0, 0, 1.4, { stroke: m.stroke(m.ink, 0.3) }),
    ...[0, 1, 2, 3].map((quarter) => {
      const [x, y] = [
        [1, 0],
        [0, 1],
        [-1, 0],
        [0, -1],
      ][quarter] as [number, number];
      return m.path(
        [
          [x * 0.8, y * 0.8],
          [x * 2.4, y * 2.4],
        ],
        { stroke: m.stroke(m.ink, 0.3) },
      );
    }),
  ],
};
