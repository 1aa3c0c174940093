import { takes } from '../catalogue/define-fitting.ts';
import { itemKinds } from '../catalogue/items.ts';
import { pointKinds } from '../catalogue/point-kinds.ts';
import { tubeKinds } from '../catalogue/tubes.ts';
import type { MatingEnd } from '../report/piece.ts';
import type { Change, Fitting, Joint } from './fitting.ts';
import { fittingAt } from './fitting-at.ts';
import type { Edge, Network, Vertex } from './network.ts';
import {
  fittingPiece,
  joiningOf,
  joiningOfBoth,
  type PlacedPiece,
  piece,
  undecided,
  type Where,
} from './piece-makers.ts';
import { tubePieces } from './tube-pieces.ts';
import { odMm, sayTube } from './tube-sizes.ts';

/** A fitting reducer sits in the socket of what stands beside it: alone between two tubes, that is a coupler. */
function changePieces(change: Change, where: Where, inSocket: boolean): PlacedPiece[] {
  const { from, to } = change;
  if (change.is === 'reducer') {
    const reducer = fittingPiece('reducer', [from, to], where);
    return inSocket ? [reducer] : [fittingPiece('coupler', [from], where), reducer];
  }
  const joining = joiningOfBoth(from.kind, to.kind, where.joining);
  if (joining === undefined || sayTube(from) !== sayTube(to)) {
    const sizes = `${from.kind} ${sayTube(from)} to ${to.kind} ${sayTube(to)}`;
    return [undecided(`An adaptor from ${sizes} must be chosen.`, where, `${sayTube(from)} x ${sayTube(to)}`)];
  }
  return [fittingPiece('coupler', [from], { ...where, joining }, `joins ${from.kind} to ${to.kind}`)];
}

const isThread = (size: string): boolean => size.includes('/') || /^(R|Rp|G)/.test(size);

/** From the pipe to the connection as its record gives it. Of the same size, the pipe goes straight into the tail. */
function jointPieces(network: Network, joint: Joint, where: Where): PlacedPiece[] {
  const turn = joint.degrees === 0 ? [] : [fittingPiece(`elbow${joint.degrees}`, [joint.tube], where)];
  const pipe = sayTube(joint.tube);
  const { size } = joint;
  const point = network.plan.points[joint.point];
  const name = point?.name || joint.point;
  if (size === null || size === '')
    return [...turn, undecided(`The size of the connection of ${name} is not told.`, where)];
  if (size === pipe) return turn;
  if (tubeKinds.get(joint.tube.kind)?.fittingsSaid !== undefined)
    return [...turn, undecided(`Pipe of ${pipe} onto a connection of ${size}.`, where)];
  if (isThread(size)) {
    const tap = pointKinds.get(point?.kind ?? '')?.group === 'tap';
    const note = tap ? '' : 'Look whether the thread is inside or outside.';
    return [...turn, piece(tap ? 'tap-connector' : 'female-iron', [pipe, size], where, note, null)];
  }
  if (joint.tube.size === null) return turn;
  const [own, tail] = [odMm(joint.tube), Number.parseFloat(size)];
  if (own === null || !Number.isFinite(tail))
    return [...turn, undecided(`Pipe of ${pipe} onto a connection of ${size}.`, where)];
  const sizes = own > tail ? [pipe, size] : [size, pipe];
  const reducer = piece('reducer', sizes, where, `onto the ${size} connection of ${name}`, null);
  const needsSocket = own > tail && turn.length === 0;
  return needsSocket ? [...turn, piece('coupler', [pipe], where, '', null), reducer] : [...turn, reducer];
}

function fittingPieces(network: Network, vertex: Vertex, fitting: Fitting, where: Where): PlacedPiece[] {
  const hasItem = vertex.items.length > 0;
  switch (fitting.is) {
    case 'coupling': {
      const own = tubeKinds.get(fitting.tube.kind)?.fittingsSaid !== undefined;
      return hasItem || own ? [] : [fittingPiece('coupler', [fitting.tube], where)];
    }
    case 'elbow': {
      const elbow = fittingPiece(`elbow${fitting.degrees}`, [fitting.tube], where);
      return fitting.change ? [elbow, ...changePieces(fitting.change, where, true)] : [elbow];
    }
    case 'reducer':
    case 'transition':
      return changePieces(fitting.change, where, hasItem);
    case 'tee': {
      const note = fitting.degrees === 45 ? `${fitting.words}, branch at 45` : fitting.words;
      const tee = fittingPiece('tee', fitting.sizes, where, note);
      return [tee, ...fitting.changes.flatMap((c) => changePieces(c, where, true))];
    }
    case 'joint':
      return jointPieces(network, fitting, where);
    case 'cap':
      return [fittingPiece('stop-end', [fitting.tube], where)];
    case 'unresolved':
      return [undecided(fitting.why, where)];
    default:
      return [];
  }
}

function itemPieces(network: Network, vertex: Vertex, edges: readonly Edge[], where: Where): PlacedPiece[] {
  return vertex.items.flatMap((id): PlacedPiece[] => {
    const item = network.plan.items[id];
    if (!item) return [];
    const kind = itemKinds.get(item.kind);
    const tube = edges[0]?.tube;
    const size = tube ? sayTube(tube) : '';
    const ends: MatingEnd[] = edges
      .slice(0, 2)
      .flatMap((e) => takes({ joining: where.joining, sizes: [] }, sayTube(e.tube)));
    return [
      {
        kind: item.kind,
        family: 'valve',
        name: kind?.listName ?? (item.name || item.kind),
        size,
        joining: where.joining,
        ends,
        amount: 1,
        unit: 'each',
        run: where.run,
        at: { item: item.id, node: item.node },
        note: '',
        unverified: item.sureness === 'assumed',
        unresolved: tube && tube.size !== null ? null : 'The size of the pipe it stands in is not known.',
        state: item.option === null ? 'there' : 'new',
      },
    ];
  });
}

/** Old pipe that carries on where a branch was cut off keeps the stub of it, and a stop end on that. */
const stubPieces = (vertex: Vertex, where: Where): PlacedPiece[] =>
  vertex.edges.length < 2
    ? []
    : vertex.cutOff.map((tube) => fittingPiece('stop-end', [tube], where, 'on the branch cut off'));

function isNew(network: Network, vertex: Vertex, edges: readonly Edge[]): boolean {
  const option = vertex.point === null ? null : (network.plan.points[vertex.point]?.option ?? null);
  return vertex.capped || option !== null || edges.some((e) => e.state === 'new');
}

/**
 * Every piece of pipe work that stands in the case, with the ends it mates by; what is there already is marked so. Bends
 * pulled in the tube are no pieces. What the drawing does not decide is a piece that says so. Clips, sleeves and lagging
 * are not here.
 */
export function piecesOf(network: Network): PlacedPiece[] {
  const fittings = new Map([...network.vertices.keys()].map((id) => [id, fittingAt(network, id)] as const));
  const pieces = tubePieces(network, fittings);
  for (const [id, fitting] of fittings) {
    const vertex = network.vertices.get(id);
    const edges = fitting.edges.flatMap((e) => network.edges.get(e) ?? []);
    const lead = edges.find((e) => e.state === 'new') ?? edges[0];
    if (!vertex || !lead) continue;
    const node = vertex.nodes[0];
    const where: Where = {
      run: lead.run,
      at: { ...(node === undefined ? {} : { node }), ...(vertex.point === null ? {} : { point: vertex.point }) },
      state: isNew(network, vertex, edges) ? 'new' : 'there',
      joining: joiningOf(network.plan.runs[lead.run], lead.tube.kind),
    };
    pieces.push(...fittingPieces(network, vertex, fitting, where));
    pieces.push(...stubPieces(vertex, where), ...itemPieces(network, vertex, edges, where));
  }
  return pieces;
}
