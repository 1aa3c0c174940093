import { type Box3, boxOf } from '../../geometry/boxes.ts';
import { type Line3, segmentDistance } from '../../geometry/segments.ts';
import type { Xyz } from '../../plan/records/parts.ts';

export const linesOf = (pts: readonly Xyz[]): Line3[] => pts.slice(1).map((b, i) => ({ a: pts[i] as Xyz, b }));

interface BoxedLine {
  readonly line: Line3;
  readonly box: Box3;
  /** Along one axis of the house, so that its box is the line itself. */
  readonly square: boolean;
}

/** Lines with the boxes about them: most pairs are told apart by those. */
export interface Lines {
  readonly all: readonly BoxedLine[];
  readonly box: Box3 | null;
}

const FLAT_MM = 1e-6;

export function boxed(lines: readonly Line3[]): Lines {
  const all = lines.map((line): BoxedLine => {
    const box = boxOf([line.a, line.b]);
    const sides = [box.maxX - box.minX, box.maxY - box.minY, box.maxZ - box.minZ];
    return { line, box, square: sides.filter((s) => s > FLAT_MM).length < 2 };
  });
  return { all, box: lines.length === 0 ? null : boxOf(lines.flatMap((l) => [l.a, l.b])) };
}

const apartOn = (minA: number, maxA: number, minB: number, maxB: number): number =>
  Math.max(0, minA - maxB, minB - maxA);

function between(a: Box3, b: Box3): number {
  const x = apartOn(a.minX, a.maxX, b.minX, b.maxX);
  const y = apartOn(a.minY, a.maxY, b.minY, b.maxY);
  const z = apartOn(a.minZ, a.maxZ, b.minZ, b.maxZ);
  return Math.sqrt(x * x + y * y + z * z);
}

/** How near two pipes come by their middle lines; `farMm` where it is that much or more. */
export function nearestOf(one: Lines, other: Lines, farMm: number): number {
  if (!one.box || !other.box || between(one.box, other.box) >= farMm) return farMm;
  let least = farMm;
  for (const p of one.all) {
    if (between(p.box, other.box) >= least) continue;
    for (const q of other.all) {
      const by = between(p.box, q.box);
      if (by < least) least = Math.min(least, p.square && q.square ? by : segmentDistance(p.line, q.line).distance);
    }
  }
  return least;
}

/** Remembers how near each choice of one comes to each choice of another. */
export class Nearness {
  private readonly lines: readonly (readonly Lines[])[];
  private readonly known = new Map<number, Float64Array>();
  private readonly farMm: number;

  constructor(lines: readonly (readonly Lines[])[], farMm: number) {
    this.lines = lines;
    this.farMm = farMm;
  }

  of(i: number, c: number, j: number, d: number): number {
    if (i > j) return this.of(j, d, i, c);
    const wide = this.lines[j]?.length ?? 0;
    const key = i * this.lines.length + j;
    let table = this.known.get(key);
    if (!table) {
      table = new Float64Array((this.lines[i]?.length ?? 0) * wide).fill(-1);
      this.known.set(key, table);
    }
    const at = c * wide + d;
    const was = table[at] ?? -1;
    if (was >= 0) return was;
    const [one, other] = [this.lines[i]?.[c], this.lines[j]?.[d]];
    const mm = one && other ? nearestOf(one, other, this.farMm) : this.farMm;
    table[at] = mm;
    return mm;
  }
}
