import { buildNetwork } from '../../network/graph.ts';
import { orderedLegs } from '../../network/runs.ts';
import type { Case, Plan } from '../../plan/plan.ts';

/** A corner of an unrolled run: how far along it on the floor, and how high above the datum. */
export interface UnrolledCorner {
  readonly vertex: string;
  readonly alongMm: number;
  readonly z: number;
}

/** A run laid out flat: along it the distance run, upwards its height. Pieces that lie aside are left out. */
export interface Unrolled {
  readonly run: string;
  readonly service: string;
  readonly corners: readonly UnrolledCorner[];
  readonly lengthMm: number;
}

/** Another run as the ribbon shows it: a bar at the height of its longest level piece. */
export interface LevelBar {
  readonly service: string;
  readonly z: number;
  readonly runs: readonly string[];
}

/** Steps shorter than this on the floor are a rise or a drop. */
const LEVEL_MM = 20;

/** The chosen run unrolled from its source, and every other run of the storey as a bar. */
export interface Section {
  readonly chosen: Unrolled | null;
  readonly others: readonly LevelBar[];
}

export function sectionOf(plan: Plan, chosenCase: Case, storey: string, run: string | null): Section {
  const network = buildNetwork(plan, chosenCase);
  let chosen: Unrolled | null = null;
  const levels = new Map<string, { service: string; z: number; runs: Set<string> }>();
  for (const record of Object.values(plan.runs)) {
    const corners: UnrolledCorner[] = [];
    let along = 0;
    let longest = { mm: 0, z: 0 };
    let here = false;
    for (const step of orderedLegs(network, record.id).steps) {
      const a = network.vertices.get(step.from)?.place;
      const b = network.vertices.get(step.to)?.place;
      if (!a || !b) continue;
      here ||= a.storey === storey || b.storey === storey;
      if (corners.length === 0) corners.push({ vertex: step.from, alongMm: 0, z: a.at.z });
      const flat = Math.hypot(a.at.x - b.at.x, a.at.y - b.at.y);
      along += flat;
      corners.push({ vertex: step.to, alongMm: along, z: b.at.z });
      if (flat > LEVEL_MM && flat > longest.mm) longest = { mm: flat, z: (a.at.z + b.at.z) / 2 };
    }
    if (corners.length < 2) continue;
    if (record.id === run) {
      chosen = { run: record.id, service: record.service, corners, lengthMm: along };
    } else if (here && longest.mm > 0) {
      const z = Math.round(longest.z);
      const key = `${record.service}|${z}`;
      const level = levels.get(key) ?? { service: record.service, z, runs: new Set<string>() };
      level.runs.add(record.id);
      levels.set(key, level);
    }
  }
  const others = [...levels.values()].map((l) => ({ service: l.service, z: l.z, runs: [...l.runs] }));
  return { chosen, others: others.sort((a, b) => b.z - a.z || (a.service < b.service ? -1 : 1)) };
}
