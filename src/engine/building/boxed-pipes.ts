import { tubeOdMm } from '../../catalogue/tubes.ts';
import { alongLine } from '../../geometry/segments.ts';
import { distance3, dot, left, length, sub } from '../../geometry/vec.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Given } from '../given.ts';
import { sayRun, saySize } from '../say-names.ts';
import type { BoxedPipe } from '../structure/smallest-box.ts';
import type { VoidPart } from './void-parts.ts';
import { longSide } from './void-section.ts';

/** Pipes that run through a box, in the order they stand in across it; and the box as it was drawn, mm. */
export interface BoxedRow {
  readonly space: Void;
  readonly pipes: readonly (BoxedPipe & { readonly run: string; readonly atMm: number })[];
  /** Names of those whose size nobody read: they are left out. */
  readonly unread: readonly string[];
  readonly drawnAcrossMm: number;
  readonly drawnOutMm: number | null;
  /** Pipes stand in it, or lie along in it. */
  readonly upright: boolean;
}

const isUpright = ({ pipe }: VoidPart): boolean =>
  Math.abs(pipe.body.b.z - pipe.body.a.z) > length(sub(pipe.body.b, pipe.body.a));

function middle({ pipe, fromMm, toMm }: VoidPart) {
  const lengthMm = distance3(pipe.body.a, pipe.body.b);
  return alongLine(pipe.body, lengthMm === 0 ? 0 : (fromMm + toMm) / 2 / lengthMm);
}

/** The longest part of each run that goes the way most of the pipe in the box goes. */
function mainParts(parts: readonly VoidPart[], upright: boolean): VoidPart[] {
  const longest = new Map<string, VoidPart>();
  for (const part of parts.filter((p) => isUpright(p) === upright)) {
    const now = longest.get(part.pipe.run);
    if (!now || part.lengthMm > now.lengthMm) longest.set(part.pipe.run, part);
  }
  return [...longest.values()];
}

/** Reads one box. Null where no pipe runs in it. */
export function boxedRow(given: Given, space: Void, parts: readonly VoidPart[]): BoxedRow | null {
  const upMm = parts.filter(isUpright).reduce((sum, p) => sum + p.lengthMm, 0);
  const upright = upMm > parts.reduce((sum, p) => sum + p.lengthMm, 0) / 2;
  const main = mainParts(parts, upright);
  if (main.length === 0) return null;
  const way = longSide(space);
  const heights = voidHeights(given.plan, space);
  const extent = (axis: { x: number; y: number }): number => {
    const at = space.outline.map((p) => dot(p, axis));
    return Math.max(...at) - Math.min(...at);
  };
  const placed = main
    .map((part) => {
      const p = middle(part);
      return { part, atMm: upright ? dot(p, way) : p.z };
    })
    .sort((a, b) => a.atMm - b.atMm || (a.part.pipe.run < b.part.pipe.run ? -1 : 1));
  const name = (part: VoidPart): string => `${sayRun(given.plan, part.pipe.run)} ${saySize(part.pipe.edge.tube)}`;
  return {
    space,
    upright,
    pipes: placed.flatMap(({ part, atMm }) => {
      const odMm = tubeOdMm(part.pipe.edge.tube);
      if (odMm === undefined) return [];
      const { edge, run } = part.pipe;
      return [
        {
          run,
          name: name(part),
          odMm,
          insulationMm: edge.insulation?.thicknessMm ?? 0,
          gas: edge.service === 'gas',
          atMm,
        },
      ];
    }),
    unread: placed.filter(({ part }) => !part.pipe.sizeKnown).map(({ part }) => name(part)),
    drawnAcrossMm: upright ? extent(way) : heights ? heights.top - heights.bottom : 0,
    drawnOutMm: extent(left(way)),
  };
}
