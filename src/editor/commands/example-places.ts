import { nodePlace } from '../../geometry/places.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Rng } from './define-command.ts';
import { servicesAt } from './legs-at.ts';
import { alongLeg, type PlaceArg } from './place-arg.ts';

/** A place for an example: mostly open floor, now and then a tail, a node or a leg of that service. */
export function somePlace(plan: Plan, rng: Rng, service: string): PlaceArg | null {
  const storey = rng.pick(Object.values(plan.storeys));
  if (!storey) return null;
  const kind = rng.below(6);
  if (kind === 0) {
    const tails = Object.values(plan.points).flatMap((p) =>
      p.connections.filter((c) => c.service === service).map((c) => ({ point: p.id, connection: c.id })),
    );
    const tail = rng.pick(tails);
    if (tail) return { at: 'connection', ...tail };
  }
  if (kind === 1) {
    const node = rng.pick(Object.values(plan.nodes).filter((n) => servicesAt(plan, n.id).has(service)));
    if (node) return { at: 'node', node: node.id };
  }
  if (kind === 2) {
    const leg = rng.pick(Object.values(plan.legs).filter((l) => plan.runs[l.run]?.service === service));
    const end = leg && plan.nodes[leg.b];
    const far = end && nodePlace(plan, end);
    const full = far && alongLeg(plan, leg, far.at);
    if (leg && full !== undefined) return { at: 'leg', leg: leg.id, alongMm: full * (rng.below(101) / 100) };
  }
  return {
    at: 'free',
    storey: storey.id,
    x: rng.below(8000) / 3,
    y: rng.below(8000) / 3,
    height: { from: rng.below(2) ? 'floor' : 'ceiling', of: storey.id, mm: rng.below(20) * 33.33 },
  };
}

export function somePath(plan: Plan, rng: Rng, service: string, length: number): PlaceArg[] | null {
  const path: PlaceArg[] = [];
  for (let i = 0; i < length; i++) {
    const place = somePlace(plan, rng, service);
    if (!place) return null;
    path.push(place);
  }
  return path;
}
