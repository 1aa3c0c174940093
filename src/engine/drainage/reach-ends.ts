import { partOf, pointKinds } from '../../catalogue/point-kinds.ts';
import { type ConnectionPlace, connectionPlace } from '../../geometry/hosting.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Connection, Point } from '../../plan/records/pipework.ts';
import { word } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { compareIds } from './reach-order.ts';

export type ReachService = 'condensate' | 'boilerRelief';
export const REACH_SERVICES: readonly ReachService[] = ['condensate', 'boilerRelief'];

/** A connection of a point, and where it is. */
export interface Tail {
  readonly point: Point;
  readonly connection: Connection;
  readonly place: ConnectionPlace;
}

/** Why an end that can be reached is still not the answer. */
export interface Objection {
  readonly state: 'stop' | 'check' | 'cantTell';
  readonly say: string;
}

function tailOf(plan: Plan, point: Point, connection: Connection): Tail[] {
  const place = connectionPlace(plan, point.id, connection.id);
  return place ? [{ point, connection, place }] : [];
}

const alive = (given: Given): Point[] =>
  Object.values(given.plan.points)
    .filter((p) => given.network.alive.has('points', p.id))
    .sort(compareIds);

/** Appliances that give off this water. Where any is new, only those: what was there already runs away somewhere. */
export function reachTails(given: Given, service: ReachService): Tail[] {
  const all = alive(given)
    .filter((p) => pointKinds.get(p.kind)?.group === 'appliance')
    .flatMap((p) =>
      p.connections
        .filter((c) => c.service === service && partOf(p, c.id) === 'source')
        .slice(0, 1)
        .flatMap((c) => tailOf(given.plan, p, c)),
    );
  const fresh = all.filter((t) => t.point.option !== null);
  return fresh.length > 0 ? fresh : all;
}

const COLUMN: Readonly<Record<ReachService, string>> = { condensate: 'condensate', boilerRelief: 'relief' };

/** What the table of ends says of a kind for this water: a kind it does not list takes what its connection is for. */
function told(kind: string, service: ReachService): string {
  const found = word('condensate-ends', kind, COLUMN[service]);
  return found.is === 'known' ? found.word : 'if';
}

/** The entry this water would use. What takes it without asking (a gully) may have one for other water only. */
function entryOf(p: Point, service: ReachService): Connection | undefined {
  const ends = p.connections.filter((c) => partOf(p, c.id) === 'end');
  const own = ends.find((c) => c.service === service);
  if (own || told(p.kind, service) !== 'yes') return own;
  return ends.find((c) => c.service === 'discharge') ?? ends[0];
}

/** Where this water may end, each with the entry it would use. What starts it again (a pump, a tundish) is no end. */
export function reachEnds(given: Given, service: ReachService): Tail[] {
  return alive(given).flatMap((p) => {
    const passesOn = p.connections.some((c) => partOf(p, c.id) === 'source');
    const entry = passesOn || told(p.kind, service) === 'no' ? undefined : entryOf(p, service);
    return entry ? tailOf(given.plan, p, entry) : [];
  });
}

const drainsTo = (what: unknown, needed: string): Objection[] => {
  if (what === 'surface') return [{ state: 'stop', say: 'takes surface water only' }];
  return what === null || what === undefined
    ? [{ state: 'cantTell', say: `not told whether it drains to ${needed}` }]
    : [];
};

/** What stands against an end itself, whatever the way to it. */
export function objectionsTo({ point }: Tail, service: ReachService): Objection[] {
  const { kind, fields } = point;
  if (kind === 'condensate-drain' && fields.laid !== true) {
    const by = typeof fields.before === 'string' && fields.before !== '' ? fields.before : 'the floor is cast';
    return [{ state: 'check', say: `lay it before ${by}` }];
  }
  if (service !== 'condensate') return [];
  if (kind === 'gully' || kind === 'rainwater-pipe') return drainsTo(fields.drains, 'foul or to surface water');
  if (kind === 'soakaway') {
    const clay = fields.ground === 'clay' || /\bclay\b/i.test(String(fields.soil ?? ''));
    if (clay) return [{ state: 'stop', say: 'clay was found' }];
    return fields.ground === 'free' ? [] : [{ state: 'cantTell', say: 'not told whether the soil drains' }];
  }
  if (kind === 'sink-waste' && fields.aboveTrap === false && fields.airBreak !== true) {
    return [{ state: 'stop', say: 'enters below the trap' }];
  }
  return [];
}
