import { PEN } from '../look/tokens.ts';
import type { MarkPen } from './mark-pen.ts';
import type { Prim } from './prim.ts';

const THIN = 0.25;
const HALF_VALVE = { long: 2.2, high: 1.3 };

/** An open outline over the line it stands in, so that the line does not show through. */
const open = (m: MarkPen, pts: readonly (readonly [number, number])[]): Prim =>
  m.path(pts, { closed: true, fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) });

const riser = (m: MarkPen): Prim =>
  m.circle(0, 0, PEN.riseRadius, { fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) });

const bowTie = (m: MarkPen): Prim[] => [
  open(m, [
    [-HALF_VALVE.long, HALF_VALVE.high],
    [-HALF_VALVE.long, -HALF_VALVE.high],
    [0, 0],
  ]),
  open(m, [
    [HALF_VALVE.long, HALF_VALVE.high],
    [HALF_VALVE.long, -HALF_VALVE.high],
    [0, 0],
  ]),
];

/** A box in the line with a letter or a stroke in it is told by what the stroke does. */
const boxed = (m: MarkPen, ...inside: Prim[]): Prim[] => [
  open(m, [
    [-2, 1.5],
    [2, 1.5],
    [2, -1.5],
    [-2, -1.5],
  ]),
  ...inside,
];
const thin = (m: MarkPen, ...pts: (readonly [number, number])[]): Prim =>
  m.path(pts, { stroke: m.stroke(m.ink, THIN) });

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
  cap: (m) => [
    m.path(
      [
        [-0.9, 1.3],
        [0, 1.3],
        [0, -1.3],
        [-0.9, -1.3],
      ],
      { stroke: m.stroke(m.ink, PEN.symbol) },
    ),
  ],
  valve: bowTie,
  checkValve: (m) => [
    ...bowTie(m),
    m.path(
      [
        [2.2, 1.3],
        [2.2, -1.3],
        [0, 0],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  mixingValve: (m) => [
    ...bowTie(m),
    open(m, [
      [-1.3, -2.2],
      [1.3, -2.2],
      [0, 0],
    ]),
  ],
  reliefValve: (m) => [
    ...bowTie(m),
    thin(m, [0, 0], [0, 2.4]),
    thin(m, [-0.8, 1.2], [0.8, 1.8]),
    thin(m, [-0.8, 1.8], [0.8, 2.4]),
  ],
  reducingValve: (m) => [
    ...bowTie(m),
    m.path(
      [
        [-2.2, 1.3],
        [-2.2, -1.3],
        [0, 0],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  filter: (m) => boxed(m, thin(m, [-2, -1.5], [2, 1.5])),
  drain: (m) => [...bowTie(m), thin(m, [0, 0], [0, -2.6]), thin(m, [-0.8, -2.6], [0.8, -2.6])],
  pump: (m) => [
    m.circle(0, 0, 1.9, { fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) }),
    m.path(
      [
        [-1, 1.4],
        [-1, -1.4],
        [1.6, 0],
      ],
      { closed: true, fill: m.ink },
    ),
  ],
  vessel: (m) => [
    thin(m, [0, 0], [0, 1.6]),
    m.circle(0, 3.2, 1.7, { fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) }),
    thin(m, [-1.7, 3.2], [1.7, 3.2]),
  ],
  gauge: (m) => [
    thin(m, [0, 0], [0, 1.4]),
    m.circle(0, 3, 1.6, { fill: m.look.paper, stroke: m.stroke(m.ink, PEN.symbol) }),
    thin(m, [0, 3], [0.8, 3.9]),
  ],
  box: (m) => boxed(m),
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
  keepClear: (m, size) => {
    const h = (size || 10) / 2;
    return [
      m.path(
        [
          [-h, -h],
          [h, -h],
          [h, h],
          [-h, h],
        ],
        { closed: true, stroke: m.stroke(m.ink, 0.2, [0.4, 0.8]) },
      ),
      m.path(
        [
          [-h + 1, h - 3],
          [-h + 1, h - 1],
          [-h + 3, h - 1],
        ],
        { stroke: m.stroke(m.ink, THIN) },
      ),
      m.path(
        [
          [h - 1, -h + 3],
          [h - 1, -h + 1],
          [h - 3, -h + 1],
        ],
        { stroke: m.stroke(m.ink, THIN) },
      ),
    ];
  },
};
