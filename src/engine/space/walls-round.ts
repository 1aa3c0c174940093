import { type BoxTree, boxTree } from '../../geometry/box-index.ts';
import { type Box3, flatBox } from '../../geometry/boxes.ts';
import type { RoomFace } from '../../geometry/rooms.ts';
import { intoWall } from '../../geometry/wall-frame.ts';
import type { Wall } from '../../plan/records/building.ts';
import type { Given } from '../given.ts';

interface BoxedWall {
  readonly wall: Wall;
  readonly box: Box3;
}

const trees = new WeakMap<Given, ReadonlyMap<string, BoxTree<BoxedWall>>>();

function treeOf(given: Given, storey: string): BoxTree<BoxedWall> | undefined {
  let found = trees.get(given);
  if (!found) {
    const rows = new Map<string, BoxedWall[]>();
    for (const wall of Object.values(given.plan.walls)) {
      if (!given.network.alive.has('walls', wall.id)) continue;
      const entry = { wall, box: flatBox([wall.a, wall.b], wall.thicknessMm) };
      const row = rows.get(wall.storey);
      if (row) row.push(entry);
      else rows.set(wall.storey, [entry]);
    }
    found = new Map([...rows].map(([id, row]) => [id, boxTree(row)]));
    trees.set(given, found);
  }
  return found.get(storey);
}

/** Standing walls of a storey that come into a box as seen from above, in the order of the plan. */
export function wallsIn(given: Given, storey: string, box: Box3): Wall[] {
  const near = treeOf(given, storey)?.near(box) ?? [];
  return [...near].sort((a, b) => a.order - b.order).map(({ entry }) => entry.wall);
}

const round = new WeakMap<RoomFace, readonly Wall[]>();

/** Walls that a closed space has a corner at. A space belongs to one case, so what it has round it is kept with it. */
export function wallsRound(given: Given, storey: string, face: RoomFace): readonly Wall[] {
  const kept = round.get(face);
  if (kept) return kept;
  const made = wallsIn(given, storey, flatBox(face.outline, 1)).filter((wall) =>
    face.outline.some((p) => Math.abs(intoWall(wall, { ...p, z: 0 }).v) <= wall.thicknessMm / 2 + 1),
  );
  round.set(face, made);
  return made;
}
