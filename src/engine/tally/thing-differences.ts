import { itemKinds } from '../../catalogue/items.ts';
import { distance3 } from '../../geometry/vec.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Difference } from '../../report/tally.ts';
import { roomsAt, sayRoom } from '../building/rooms-beside.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint, sentence } from '../say-names.ts';
import { matched, type Pairs, placeOfPoint } from './pairs.ts';
import { systemOf } from './run-differences.ts';

const POINTS = 'Appliances and points';
/** Nearer than this it stands where it stood, mm. */
const SAME_MM = 1;

/** "in the kitchen", or the floor where it is in no room. */
function placeSaid(given: Given, id: string): string {
  const point = given.plan.points[id];
  const at = placeOfPoint(given, id);
  if (!point || !at) return '';
  const room = roomsAt(given, point.storey, at)[0];
  const storey = given.plan.storeys[point.storey]?.name ?? '';
  if (room) return `in the ${sayRoom(room)}`;
  return storey === '' ? '' : `on the ${midSentence(storey)}`;
}

const sizeSaid = ({ size }: Point): string =>
  [size.widthMm, size.depthMm, size.heightMm].map((mm) => Math.round(mm)).join(' x ');

function movedSaid(from: Given, to: Given, pair: { from: string; to: string }): string {
  const [a, b] = [placeOfPoint(from, pair.from), placeOfPoint(to, pair.to)];
  if (!a || !b || distance3(a, b) < SAME_MM) return '';
  const far = distance3(a, b);
  return `${far < 1000 ? `${Math.round(far)} mm` : `${(far / 1000).toFixed(1)} m`} away, ${placeSaid(to, pair.to)}`;
}

/** What a point is besides its place and its ids. */
const make = ({ size, fields, connections }: Point): string => JSON.stringify([size, fields, connections]);

export function pointDifferences(from: Given, to: Given, { pairs, gone, fresh }: Pairs): Difference[] {
  return [
    ...pairs.flatMap((pair): Difference[] => {
      const [p, q] = [from.plan.points[pair.from], to.plan.points[pair.to]];
      if (!p || !q) return [];
      const moved = movedSaid(from, to, pair);
      const said = [
        moved,
        p.name === q.name ? '' : `instead of ${sayPoint(from.plan, pair.from)}`,
        sizeSaid(p) === sizeSaid(q) ? '' : `${sizeSaid(q)} instead of ${sizeSaid(p)}`,
      ].filter((s) => s !== '');
      if (said.length === 0 && make(p) !== make(q)) said.push('with other figures');
      if (said.length === 0) return [];
      const kind = moved === '' ? 'changed' : 'moved';
      const name = sentence(sayPoint(to.plan, pair.to));
      return [{ system: POINTS, kind, name, say: said.join(', '), before: [pair.from], after: [pair.to] }];
    }),
    ...fresh.map(
      (id): Difference => ({
        system: POINTS,
        kind: 'new',
        name: sentence(sayPoint(to.plan, id)),
        say: placeSaid(to, id),
        before: [],
        after: [id],
      }),
    ),
    ...gone.map(
      (id): Difference => ({
        system: POINTS,
        kind: 'gone',
        name: sentence(sayPoint(from.plan, id)),
        say: placeSaid(from, id),
        before: [id],
        after: [],
      }),
    ),
  ];
}

function itemsIn(given: Given, other: Given): string[] {
  return Object.keys(given.plan.items).filter(
    (id) => given.network.alive.has('items', id) && !other.network.alive.has('items', id),
  );
}

function serviceOfItem(given: Given, id: string): string {
  const vertex = given.network.vertexOf.get(given.plan.items[id]?.node ?? '');
  const edge = given.network.vertices.get(vertex ?? '')?.edges[0];
  return given.network.edges.get(edge ?? '')?.service ?? '';
}

/** Valves and the like that one case has more of than the other, by kind and service. */
export function itemDifferences(from: Given, to: Given): Difference[] {
  const kindAndService = (given: Given, id: string): string =>
    `${given.plan.items[id]?.kind} ${serviceOfItem(given, id)}`;
  const { gone, fresh } = matched(itemsIn(from, to), itemsIn(to, from), (f, t) =>
    kindAndService(from, f) === kindAndService(to, t) ? 0 : -1,
  );
  const row = (given: Given, id: string, kind: 'new' | 'gone'): Difference => {
    const item = given.plan.items[id];
    const name = item?.name || itemKinds.get(item?.kind ?? '')?.label || (item?.kind ?? '');
    const service = serviceOfItem(given, id);
    const [before, after] = kind === 'new' ? [[], [id]] : [[id], []];
    return { system: systemOf(service), kind, name: sentence(name), say: '', before, after };
  };
  return [...fresh.map((id) => row(to, id, 'new')), ...gone.map((id) => row(from, id, 'gone'))];
}
