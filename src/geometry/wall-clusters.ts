import type { Wall } from '../plan/records/building.ts';
import { boxTree } from './box-index.ts';
import type { Box3 } from './boxes.ts';
import { JOINT_MM } from './wall-joints.ts';

/** Room that a wall's corners and joints may take beyond its centreline: its own thickness all round, and the joint. */
function reachOf(wall: Wall): Box3 {
  const far = wall.thicknessMm + JOINT_MM;
  return {
    minX: Math.min(wall.a.x, wall.b.x) - far,
    minY: Math.min(wall.a.y, wall.b.y) - far,
    minZ: 0,
    maxX: Math.max(wall.a.x, wall.b.x) + far,
    maxY: Math.max(wall.a.y, wall.b.y) + far,
    maxZ: 0,
  };
}

/**
 * Walls that can have to do with one another, house by house: what lies in two groups never joins, touches or overlaps. Walls keep
 * their order within a group, and groups the order of their first walls.
 */
export function wallClusters(walls: readonly Wall[]): Wall[][] {
  const boxed = walls.map((wall) => ({ wall, box: reachOf(wall) }));
  const tree = boxTree(boxed);
  const group = new Int32Array(walls.length).fill(-1);
  const found: number[][] = [];
  for (const [start] of walls.entries()) {
    if (group[start] !== -1) continue;
    const members = [start];
    group[start] = found.length;
    for (let i = 0; i < members.length; i++) {
      const here = boxed[members[i] ?? start];
      if (!here) continue;
      for (const { order } of tree.near(here.box)) {
        if (group[order] !== -1) continue;
        group[order] = found.length;
        members.push(order);
      }
    }
    found.push(members.sort((a, b) => a - b));
  }
  return found.map((members) => members.flatMap((i) => walls[i] ?? []));
}
