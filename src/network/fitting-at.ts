import type { Tube } from '../plan/records/pipework.ts';
import { angleClass, canBePulled, sayDegrees, tolerance, turnBetween } from './angles.ts';
import type { Change, Fitting, Unresolved } from './fitting.ts';
import { type Edge, into, type Network, sameTube, type Vertex } from './network.ts';
import { teeAt } from './tees.ts';
import { bySize, larger } from './tube-sizes.ts';

function unresolved(vertex: Vertex, reason: Unresolved['reason'], why: string): Unresolved {
  return { is: 'unresolved', vertex: vertex.id, edges: vertex.edges, reason, why };
}

/** From the larger tube to the smaller. */
function changeBetween(one: Edge, other: Edge): Change | null {
  if (sameTube(one.tube, other.tube)) return null;
  const [from, to] = bySize(one.tube, other.tube) <= 0 ? [one, other] : [other, one];
  return { is: from.tube.kind === to.tube.kind ? 'reducer' : 'transition', from: from.tube, to: to.tube, edge: to.id };
}

function straightOn(vertex: Vertex, one: Edge, other: Edge): Fitting {
  const at = { vertex: vertex.id, edges: vertex.edges };
  const change = changeBetween(one, other);
  if (change) return { is: change.is, ...at, change };
  if (one.state !== other.state) return { is: 'coupling', ...at, tube: one.tube };
  return { is: 'plain', ...at };
}

/** How the corner is made: what the node says, else what both runs say. New and old tube are never one bend. */
function isPulled(network: Network, vertex: Vertex, one: Edge, other: Edge): boolean {
  if (!sameTube(one.tube, other.tube) || one.state !== other.state || !canBePulled(one.tube.kind)) return false;
  const own = network.plan.nodes[vertex.nodes[0] ?? '']?.turn;
  return (own ?? (network.plan.runs[one.run]?.turns === 'bend' && network.plan.runs[other.run]?.turns)) === 'bend';
}

function twoWays(network: Network, vertex: Vertex, one: Edge, other: Edge): Fitting {
  const [u, w] = [into(one, vertex.id), into(other, vertex.id)];
  const unseen = one.kind === 'stretch' || other.kind === 'stretch';
  // The bends of an unseen stretch are counted with the stretch; here it only carries on.
  if (unseen) return straightOn(vertex, one, other);
  if (!u || !w)
    return unresolved(vertex, 'place', 'The place of a pipe is not known, so its turn is not known either.');
  const turnDeg = turnBetween(u, w);
  const give = tolerance([one.tube.kind, other.tube.kind]);
  const found = angleClass(turnDeg, give);
  if (found === 0) return straightOn(vertex, one, other);
  const at = { vertex: vertex.id, edges: vertex.edges };
  if (isPulled(network, vertex, one, other)) {
    if (turnDeg <= 90 + give)
      return { is: 'bend', ...at, degrees: turnDeg <= 45 + give ? 45 : 90, turnDeg, tube: one.tube };
    return unresolved(
      vertex,
      'angle',
      `The pipe turns by ${sayDegrees(turnDeg)}, sharper than a right angle. No bend is read that far.`,
    );
  }
  if (found === undefined) {
    return unresolved(vertex, 'angle', `The pipe turns by ${sayDegrees(turnDeg)}. Made elbows turn by 45 or 90.`);
  }
  const tube: Tube = larger(one.tube, other.tube);
  return { is: 'elbow', ...at, degrees: found, turnDeg, tube, change: changeBetween(one, other) };
}

function atConnection(vertex: Vertex, edges: readonly Edge[]): Fitting {
  const [edge, ...more] = edges;
  const at = { vertex: vertex.id, edges: vertex.edges };
  if (!edge || vertex.point === null || vertex.connection === null) return { is: 'none', ...at };
  if (more.length > 0) {
    return unresolved(
      vertex,
      'connection',
      `${edges.length} pipes meet on one connection. Bring them together at a tee before it.`,
    );
  }
  const way = into(edge, vertex.id);
  const facing = vertex.facing;
  // The pipe comes out along the facing, so the way through is from against it.
  const turnDeg = way && facing ? turnBetween({ x: -facing.x, y: -facing.y, z: -facing.z }, way) : 0;
  const degrees = angleClass(turnDeg, tolerance([edge.tube.kind]));
  if (degrees === undefined) {
    return unresolved(
      vertex,
      'connection',
      `The pipe leaves its connection at ${sayDegrees(turnDeg)} to the way it faces.`,
    );
  }
  const { point, connection } = vertex;
  return { is: 'joint', ...at, point, connection, tube: edge.tube, size: null, degrees, turnDeg };
}

const known = new WeakMap<Network, Map<string, Fitting>>();

/**
 * What stands at a vertex, by the pipes alive there and their angles. Worked out once for each network. Throws on an id
 * the network does not have.
 */
export function fittingAt(network: Network, vertexId: string): Fitting {
  let fittings = known.get(network);
  if (!fittings) {
    fittings = new Map();
    known.set(network, fittings);
  }
  const fitting = fittings.get(vertexId) ?? readFitting(network, vertexId);
  fittings.set(vertexId, fitting);
  return fitting;
}

function readFitting(network: Network, vertexId: string): Fitting {
  const vertex = network.vertices.get(vertexId);
  if (!vertex) throw new Error(`no vertex "${vertexId}"`);
  const edges = vertex.edges.flatMap((id) => network.edges.get(id) ?? []);
  const [a, b, c] = edges;
  const at = { vertex: vertex.id, edges: vertex.edges };
  if (!a) return { is: 'none', ...at };
  if (vertex.point !== null) {
    const fitting = atConnection(vertex, edges);
    const own = network.plan.points[vertex.point]?.connections.find((x) => x.id === vertex.connection);
    return fitting.is === 'joint' ? { ...fitting, size: own?.size ?? null } : fitting;
  }
  if (edges.length === 1) return { is: vertex.capped ? 'cap' : 'open', ...at, tube: a.tube };
  if (b && edges.length === 2) return twoWays(network, vertex, a, b);
  if (b && c && edges.length === 3) return teeAt(vertex, [a, b, c]);
  if (edges.length === 4) {
    return unresolved(vertex, 'cross', 'Four pipes meet. Crosses are not stocked: use two tees, one after the other.');
  }
  return unresolved(vertex, 'ways', `${edges.length} pipes meet in one place. Spread them over tees.`);
}
