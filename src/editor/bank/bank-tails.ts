import type { Tail } from '../../network/bank/bank.ts';
import { tailAt } from '../../network/bank/read-bank.ts';
import type { Plan } from '../../plan/plan.ts';

export interface FreeTail {
  readonly point: string;
  readonly connection: string;
  readonly tail: Tail;
}

/** A pipe of the same option, or one that stays, is on the tail already. */
function isTaken(plan: Plan, point: string, connection: string, option: string | null): boolean {
  const nodes = new Set<string>();
  for (const { id, place } of Object.values(plan.nodes)) {
    if (place.on === 'connection' && place.point === point && place.connection === connection) nodes.add(id);
  }
  if (nodes.size === 0) return false;
  const fates = option === null ? {} : (plan.options[option]?.fates ?? {});
  return Object.values(plan.legs).some(
    (l) =>
      (nodes.has(l.a) || nodes.has(l.b)) &&
      (l.option === option || (l.option === null && fates[l.id] !== 'strip' && fates[l.run] !== 'strip')),
  );
}

/** For each service a free tail of the point, each tail once; null where it has none left. */
export function freeTails(
  plan: Plan,
  point: string,
  services: readonly string[],
  option: string | null,
): (FreeTail | null)[] {
  const given = new Set<string>();
  return services.map((service) => {
    const found = plan.points[point]?.connections.find(
      (c) => c.service === service && !given.has(c.id) && !isTaken(plan, point, c.id, option),
    );
    const tail = found && tailAt(plan, point, found.id);
    if (!found || !tail) return null;
    given.add(found.id);
    return { point, connection: found.id, tail };
  });
}
