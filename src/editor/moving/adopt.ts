import type { Plan } from '../../plan/plan.ts';

const MAPS = ['walls', 'openings', 'points', 'nodes', 'legs', 'stretches', 'items', 'runs'] as const;

/** Writes into a draft of `before` what another plan, made from `before`, has otherwise. */
export function adopt(draft: Plan, before: Plan, next: Plan): string[] {
  const made: string[] = [];
  for (const map of MAPS) {
    if (before[map] === next[map]) continue;
    const to = draft[map] as Record<string, unknown>;
    for (const [id, record] of Object.entries(next[map])) {
      if (before[map][id] === record) continue;
      if (!(id in before[map])) made.push(id);
      to[id] = record;
    }
    for (const id of Object.keys(before[map])) if (!(id in next[map])) delete to[id];
  }
  return made;
}
