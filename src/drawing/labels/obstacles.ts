import RBush from 'rbush';
import type { Box, Fragment, Item, Vec } from '../display-list.ts';
import { encloses, grow, overlap, type Paper, touches } from './paper.ts';

/** What a label pays for covering something, and for each 10 mm of paper that it stands away. */
export const COST = { pipe: 8, mark: 8, text: 6, wall: 8, dimension: 6, leader: 10, per10Mm: 1 } as const;
/** A leader that leads through a wall takes the eye out of the room. */
const THROUGH_WALL = 6;
export type Covered = Exclude<keyof typeof COST, 'per10Mm'>;

interface Obstacle extends Box {
  readonly what: Covered;
  /** A line; undefined: the box itself. */
  readonly line?: readonly [Vec, Vec];
  /** Whose it is: a label may cover what it speaks of. */
  readonly of: string;
}

/** Long slanted lines are kept in pieces, so that their boxes do not fill the page. */
const PIECE_MM = 12;
/** Marks by name whose room is larger than a dot. */
const MARK_MM = 1.8;
/** A wedge is a long mark over its line. */
const WEDGE = { half: 5, over: 2 };

const around = (p: Vec, q: Vec): Box => ({
  minX: Math.min(p[0], q[0]),
  minY: Math.min(p[1], q[1]),
  maxX: Math.max(p[0], q[0]),
  maxY: Math.max(p[1], q[1]),
});

/** Do two pieces of line cross, ends not counted? */
function cross(p: Vec, q: Vec, a: Vec, b: Vec): boolean {
  const side = (o: Vec, u: Vec, v: Vec): number => (u[0] - o[0]) * (v[1] - o[1]) - (u[1] - o[1]) * (v[0] - o[0]);
  return side(p, q, a) * side(p, q, b) < 0 && side(a, b, p) * side(a, b, q) < 0;
}

/** Things on the paper that labels keep off, and labels already placed. */
export interface Obstacles {
  addLine(p: Vec, q: Vec, what: Covered, of: string): void;
  addBox(box: Box, what: Covered, of: string): void;
  /** A label: nothing else may overlap it. */
  claim(box: Box): void;
  /** Gives back what was claimed with the very same box. */
  release(box: Box): void;
  /** Is nothing claimed there, and is all of it in view? */
  isFree(box: Box): boolean;
  /** Solid parts of the building: outlines, with what is cut out of them. */
  addSolid(rings: readonly (readonly Vec[])[]): void;
  inSolid(place: Vec): boolean;
  /** What is in view, in mm of paper; undefined: everything. */
  readonly within: Box | undefined;
  sees(place: Vec): boolean;
  /** Sum of what a box covers, each thing once; the pipes of `own` are free. */
  cost(box: Box, own?: ReadonlySet<string>): number;
  lineIsFree(p: Vec, q: Vec): boolean;
  /** Sum of what a leader crosses. */
  lineCost(p: Vec, q: Vec, own: ReadonlySet<string>): number;
}

const inside = (b: Box, w: Box): boolean =>
  b.minX >= w.minX && b.maxX <= w.maxX && b.minY >= w.minY && b.maxY <= w.maxY;

export function obstacles(within?: Box): Obstacles {
  const things = new RBush<Obstacle>();
  const labels = new RBush<Box>();
  const solids: (readonly (readonly Vec[])[])[] = [];
  return {
    addLine(p, q, what, of) {
      const straight = Math.abs(p[0] - q[0]) < 0.1 || Math.abs(p[1] - q[1]) < 0.1;
      const n = straight ? 1 : Math.max(1, Math.ceil(Math.hypot(q[0] - p[0], q[1] - p[1]) / PIECE_MM));
      const at = (t: number): Vec => [p[0] + (q[0] - p[0]) * t, p[1] + (q[1] - p[1]) * t];
      for (let i = 0; i < n; i++) {
        const [a, b] = [at(i / n), at((i + 1) / n)];
        things.insert({
          minX: Math.min(a[0], b[0]),
          minY: Math.min(a[1], b[1]),
          maxX: Math.max(a[0], b[0]),
          maxY: Math.max(a[1], b[1]),
          what,
          line: [a, b],
          of,
        });
      }
    },
    addBox(box, what, of) {
      things.insert({ ...box, what, of });
    },
    claim(box) {
      labels.insert(box);
    },
    release(box) {
      labels.remove(box);
    },
    isFree: (box) => (!within || inside(box, within)) && labels.search(box).every((b) => !overlap(b, box)),
    addSolid(rings) {
      solids.push(rings);
    },
    inSolid: (place) => solids.some((rings) => rings.filter((ring) => encloses(ring, place)).length % 2 === 1),
    within,
    sees: ([x, y]) => !within || inside({ minX: x, minY: y, maxX: x, maxY: y }, within),
    cost(box, own) {
      let sum = 0;
      const counted = new Set<string>();
      for (const o of things.search(box)) {
        if ((o.what === 'pipe' && own?.has(o.of)) || !(o.line ? touches(box, o.line[0], o.line[1]) : overlap(box, o)))
          continue;
        const key = `${o.what} ${o.of}`;
        if (counted.has(key)) continue;
        counted.add(key);
        sum += COST[o.what];
      }
      return sum;
    },
    lineIsFree: (p, q) => labels.search(around(p, q)).every((b) => !touches(b, p, q)),
    lineCost(p, q, own) {
      let sum = 0;
      const counted = new Set<string>();
      for (const o of things.search(around(p, q))) {
        if (own.has(o.of) || o.what === 'dimension') continue;
        const key = `${o.what} ${o.of}`;
        if (counted.has(key)) continue;
        const hit = o.line ? cross(p, q, o.line[0], o.line[1]) : touches(o, p, q);
        if (!hit) continue;
        counted.add(key);
        sum += o.what === 'wall' ? THROUGH_WALL : COST.pipe;
      }
      return sum;
    },
  };
}

function addItem(item: Item, fragment: Fragment, paper: Paper, to: Obstacles): void {
  const { layer, id } = fragment;
  if (item.t === 'mark') {
    const [x, y] = paper.at(item.at, item.spread);
    if (item.mark.startsWith('wedge')) {
      const turn = (item.turnDeg * Math.PI) / 180;
      const up = item.mark === 'wedge' ? WEDGE.over : -WEDGE.over;
      const at = (along: number): Vec => [
        x + Math.cos(turn) * along - Math.sin(turn) * up,
        y + Math.sin(turn) * along + Math.cos(turn) * up,
      ];
      to.addLine(at(-WEDGE.half), at(WEDGE.half), 'mark', id);
      return;
    }
    to.addBox(grow({ minX: x, minY: y, maxX: x, maxY: y }, MARK_MM), 'mark', id);
    return;
  }
  if (item.t === 'line') {
    const what: Covered = layer === 'run' ? 'pipe' : layer === 'point' ? 'mark' : 'wall';
    if (layer === 'void' || layer === 'joist') return;
    const pts = item.pts.map((p, i) => paper.at(p, item.spread?.[i]));
    pts.forEach((p, i) => {
      const before = pts[i - 1];
      if (before) to.addLine(before, p, what, id);
    });
    return;
  }
  if (item.t === 'area' && item.fill === 'wall') to.addSolid(item.rings.map((ring) => ring.map((p) => paper.at(p))));
  if (item.t === 'area' && (layer === 'wall' || layer === 'point') && item.edge) {
    for (const ring of item.rings) {
      ring.forEach((p, i) => {
        to.addLine(paper.at(p), paper.at(ring[(i + 1) % ring.length] ?? p), layer === 'wall' ? 'wall' : 'mark', id);
      });
    }
  }
}

/** Everything that fragments put on the paper, for labels to keep off. */
export function obstaclesOf(fragments: readonly Fragment[], paper: Paper, within?: Box): Obstacles {
  const found = obstacles(within);
  for (const fragment of fragments) for (const item of fragment.items) addItem(item, fragment, paper, found);
  return found;
}
