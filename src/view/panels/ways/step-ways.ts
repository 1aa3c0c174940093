import { workPlane } from '../../../editor/input/work-plane.ts';
import { bodyOf, pipeAsObstacle } from '../../../editor/steps/obstacle.ts';
import { propose } from '../../../editor/steps/proposal.ts';
import { waysAcross } from '../../../editor/steps/ways.ts';
import { nodePlace } from '../../../geometry/places.ts';
import { scale3 } from '../../../geometry/vec.ts';
import type { Plan } from '../../../plan/plan.ts';
import type { Finding } from '../../../report/finding.ts';
import { hasRoom } from './room-about.ts';
import { type Way, whatOf } from './ways-out.ts';

/** Bends of a passover as it is usually made. */
const ANGLE_DEG = 45;

/**
 * Ways out of a clash of two pipes that leave both where they run: one of them passes the other with a step. The least
 * step each way, where there is room for it; what else stands in the way is for the engine to say.
 */
export function stepWays(plan: Plan, finding: Finding): readonly Way[] {
  if (!finding.rule.startsWith('clash/') || finding.wantedIs !== 'atLeast') return [];
  const plane = workPlane(plan, { kind: 'plan', storey: '' });
  const [one, other] = finding.legs;
  if (!plane || one === undefined || other === undefined) return [];
  return [
    [one, other],
    [other, one],
  ].flatMap(([leg, beside]): Way[] => {
    const record = plan.legs[leg ?? ''];
    const of = bodyOf(plan, leg ?? '');
    const obstacle = pipeAsObstacle(plan, leg ?? '', beside ?? '');
    const node = record && plan.nodes[record.a];
    const storey = node && nodePlace(plan, node)?.storey;
    if (!record || record.option === null || !of || !obstacle || storey === undefined) return [];
    const what = whatOf(plan, record, plan.legs[beside ?? '']);
    return waysAcross(of.body.a, of.body.b, plane).flatMap((way): Way[] => {
      const { alongMm } = obstacle;
      const told = { leg: record.id, alongMm, kind: 'passover' as const, way, angleDeg: ANGLE_DEG, obstacle };
      const proposal = propose(plan, { ...told, offsetMm: null, overMm: null, flipped: false });
      if (!proposal?.laid.ok || proposal.leastMm === null) return [];
      const by = scale3(way.way, proposal.leastMm);
      const at = proposal.corners[0];
      if (!at || !hasRoom(plan, storey, at, by, of.body.radiusMm)) return [];

      const goes = way.label === 'over' || way.label === 'under' ? way.label : 'beside';
      const label = `Pass ${what} ${goes} ${obstacle.name}`;
      return [{ leg: record.id, by, mm: proposal.leastMm, step: proposal.step, label, under: proposal.figures }];
    });
  });
}
