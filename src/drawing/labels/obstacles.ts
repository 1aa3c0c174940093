import RBush from 'rbush';
import type { Box, Fragment, Item, Vec } from '../display-list.ts';
import { grow, overlap, type Paper, touches } from './paper.ts';

/** What a label pays for covering something, and for each 10 mm of paper that it stands away. */
export const COST = { pipe: 8, mark: 8, text: 6, wall: 3, dimension: 3, per10Mm: 1 } as const;
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
  isFree(box: Box): boolean;
  /** Sum of what a box covers, each thing once; the pipes of `own` are free. */
  cost(box: Box, own?: ReadonlySet<string>): number;
  lineIsFree(p: Vec, q: Vec): boolean;
  /** Sum of what a leader crosses, walls not counted. */
  lineCost(p: Vec, q: Vec, own: ReadonlySet<string>): number;
}

export function obstacles(): Obstacles {
  const things = new RBush<Obstacle>();
  const labels = new RBush<Box>();
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
    isFree: (box) => labels.search(box).every((b) => !overlap(b, box)),
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
      const counted = new Set<string>();
      for (const o of things.search(around(p, q))) {
        if (own.has(o.of) || o.what === 'wall' || o.what === 'dimension') continue;
        const hit = o.line ? cross(p, q, o.line[0], o.line[1]) : touches(o, p, q);
        if (hit) counted.add(`${o.what} ${o.of}`);
      }
      return counted.size * COST.pipe;
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
  if (item.t === 'area' && (layer === 'wall' || layer === 'point') && item.edge) {
    for (const ring of item.rings) {
      ring.forEach((p, i) => {
        to.addLine(paper.at(p), paper.at(ring[(i + 1) % ring.length] ?? p), layer === 'wall' ? 'wall' : 'mark', id);
      });
    }
  }
}

/** Everything that fragments put on the paper, for labels to keep off. */
export function obstaclesOf(fragments: readonly Fragment[], paper: Paper): Obstacles {
  const found = obstacles();
  for (const fragment of fragments) for (const item of fragment.items) addItem(item, fragment, paper, found);
  return found;
}
