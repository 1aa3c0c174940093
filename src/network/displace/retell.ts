import { resolveHeight } from '../../geometry/heights.ts';
import { scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Case, Plan } from '../../plan/plan.ts';
import type { HeightRef, Xyz } from '../../plan/records/parts.ts';
import type { Leg } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { buildNetwork } from '../graph.ts';
import { orderedLegs } from '../runs.ts';
import { type Changes, type Displaced, Refusal } from './changes.ts';
import { answer, type DisplaceOptions, follow, staying } from './follow.ts';
import { type Incidence, incidence } from './incidence.ts';
import { otherNode } from './law.ts';
import { sayPoint } from './say.ts';
import { movedPoints, shifted } from './told.ts';

/** A leg told anew: how long it is, or at what height it ends. */
export type Retold = { readonly lengthMm: number } | { readonly height: HeightRef };

interface Beyond {
  readonly nodes: ReadonlySet<string>;
  readonly points: ReadonlySet<string>;
}

/** Everything reached from a node other than through one leg, and the points that meet it. */
function beyond(plan: Plan, at: Incidence, start: string, without: Leg): Beyond {
  const nodes = new Set([start]);
  const points = new Set<string>();
  for (const id of nodes) {
    for (const pipe of [...at.legsAt(id), ...at.stretchesAt(id)]) {
      if (pipe.id !== without.id) nodes.add(pipe.a === id ? pipe.b : pipe.a);
    }
    const place = plan.nodes[id]?.place;
    if (place?.on !== 'connection') continue;
    points.add(place.point);
    for (const other of at.nodesOn(place.point)) {
      if (other.place.on === 'connection' && other.place.connection === place.connection) nodes.add(other.id);
    }
  }
  return { nodes, points };
}

/** A point goes along where it stands free and nothing but this run reaches it. */
function isFree(
  plan: Plan,
  at: Incidence,
  id: string,
  far: Beyond,
  hold: boolean,
  fixed: ReadonlySet<string> | undefined,
) {
  const point = plan.points[id];
  if (point?.place.on !== 'storey' || fixed?.has(id)) return false;
  if (hold && point.option === null && point.sureness === 'seen') return false;
  return at.nodesOn(id).every((n) => far.nodes.has(n.id));
}

function shiftOf(plan: Plan, from: Xyz, to: Xyz, told: Retold): Xyz {
  const way = sub3(to, from);
  const was = Math.hypot(way.x, way.y, way.z);
  if ('lengthMm' in told) {
    if (!(told.lengthMm > COINCIDENT_MM)) throw new Refusal('A leg needs a length above nothing.');
    if (was <= COINCIDENT_MM) throw new Refusal('This leg has no way to go yet.');
    return scale3(unit3(way), told.lengthMm - was);
  }
  if (Math.hypot(way.x, way.y) > COINCIDENT_MM)
    throw new Refusal('Only a leg that goes up or down can be told by a height.');
  const z = resolveHeight(plan, told.height)?.z;
  if (z === undefined) throw new Refusal('That height leans on something that is not there.');
  if (Math.abs(z - from.z) <= COINCIDENT_MM) throw new Refusal('At that height the leg would have no length.');
  return { x: 0, y: 0, z: z - to.z };
}

/** The end of a leg told by a height keeps what it was measured from. */
function measuredFrom(plan: Plan, changes: Changes, node: string, told: Retold): Changes {
  const record = changes.nodes[node] ?? plan.nodes[node];
  if (!('height' in told) || record?.place.on !== 'storey' || changes.removedNodes.includes(node)) return changes;
  return {
    ...changes,
    nodes: { ...changes.nodes, [node]: { ...record, place: { ...record.place, height: told.height } } },
  };
}

/**
 * Tells one leg of a run anew. Everything beyond it goes along by the difference: corners, branches, and points that stand
 * free and hang on this run alone. Where something beyond it is held, the move is taken up on the way to it instead, as
 * displace() does. `index` counts the run's steps from its source (orderedLegs).
 */
export function retell(
  plan: Plan,
  chosen: Case,
  run: string,
  index: number,
  told: Retold,
  options: DisplaceOptions,
): Displaced {
  return answer(() => {
    const network = buildNetwork(plan, chosen);
    const step = orderedLegs(network, run).steps[index];
    const leg = step && plan.legs[step.edge];
    if (!step || !leg) throw new Refusal('That part of the run cannot be told: nobody has seen it.');
    const end = network.vertexOf.get(leg.b) === step.to ? leg.b : leg.a;
    const from = network.vertices.get(step.from)?.place;
    const to = network.vertices.get(step.to)?.place;
    if (!from || !to) throw new Refusal('The place of this leg is not known.');
    const by = shiftOf(plan, from.at, to.at, told);
    const at = incidence(plan);
    const hold = options.holdSeen ?? leg.option !== null;
    const stays = staying(plan, at, hold, options);
    const far = beyond(plan, at, end, leg);
    const free = [...far.points].filter((id) => isFree(plan, at, id, far, hold, options.fixed));
    const heldBy = (id: string): boolean => {
      const place = plan.nodes[id]?.place;
      return place?.on === 'connection' ? !free.includes(place.point) : stays(id);
    };
    if (!far.nodes.has(otherNode(leg, end)) && ![...far.nodes].some(heldBy)) {
      const points = movedPoints(
        plan,
        free.map((point) => ({ point, by })),
      );
      const after = { ...plan, points: { ...plan.points, ...Object.fromEntries(points) } };
      const nodes = [...far.nodes].flatMap((id) => plan.nodes[id] ?? []);
      const tails = shifted(plan, after, nodes).told;
      const all = new Map([...far.nodes].map((id) => [id, tails.get(id) ?? by] as const));
      return measuredFrom(
        plan,
        follow(plan, after, { told: all, carried: new Map() }, points, stays, options),
        end,
        told,
      );
    }
    const place = plan.nodes[end]?.place;
    if (place?.on === 'connection') {
      throw new Refusal(`This leg ends at ${sayPoint(plan, place.point)}, which stays: move that instead.`);
    }
    if (stays(end)) throw new Refusal('This leg ends at pipe that was there, which stays.');
    return measuredFrom(
      plan,
      follow(plan, plan, { told: new Map([[end, by]]), carried: new Map() }, new Map(), stays, options),
      end,
      told,
    );
  });
}
