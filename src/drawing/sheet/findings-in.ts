import type { Plan } from '../../plan/plan.ts';
import type { Finding } from '../../report/finding.ts';
import type { Box, View } from '../display-list.ts';
import { NEAR_FACE_MM } from '../pipes/pipes-in-view.ts';
import { planeOf } from '../pipes/plane.ts';

/** Findings whose place shows in a window of a view. */
export function findingsIn(plan: Plan, view: View, findings: readonly Finding[], window: Box): Finding[] {
  const plane = planeOf(plan, view);
  return findings.filter(({ at }) => {
    if (!plane || !at || at.storey !== plane.storey) return false;
    if (view.kind === 'face' && Math.abs(plane.toReader(at)) > NEAR_FACE_MM) return false;
    const [x, y] = plane.at(at);
    return x >= window.minX && x <= window.maxX && y >= window.minY && y <= window.maxY;
  });
}
