import type { FreePlace, HeightRef, HostedPlace } from '../plan/records/parts.ts';
import type { Point } from '../plan/records/pipework.ts';
import { figure } from '../reference/figure.ts';
import { tables } from '../reference/tables.ts';
import type { Fields, PointKind, Size } from './define-point.ts';
import { pointKinds } from './point-kinds.ts';

type WithoutHeight<P> = Omit<P, 'height'> & { readonly height?: HeightRef };

export interface PointChoices {
  readonly id: string;
  readonly storey: string;
  /** A place with no height takes the one assumed for its kind. */
  readonly place: WithoutHeight<FreePlace> | WithoutHeight<HostedPlace>;
  /** Null: surveyed. */
  readonly option: string | null;
  readonly name?: string;
  readonly size?: Partial<Size>;
  readonly fields?: Fields;
  readonly sureness?: Point['sureness'];
  readonly thing?: string | null;
}

const HEIGHTS = 'assumed-heights';

/**
 * Height above the storey's floor that a kind is taken to have until it is measured, with its bounds. Where no table
 * says, it stands on the floor.
 */
export function assumedHeight(kind: PointKind, storey: string): HeightRef {
  const table = tables().find((t) => t.id === HEIGHTS);
  const found = table && figure(table, kind.assumedHeight);
  if (found?.is !== 'known') return { from: 'floor', of: storey, mm: 0 };
  const { lo, hi, value } = found;
  const mm = value ?? (hi === null ? lo : (lo + hi) / 2);
  return { from: 'floor', of: storey, mm, ...(hi === null || lo === hi ? {} : { assumed: { lo, hi } }) };
}

/** A point as its kind makes it: the catalogue's sizes and tails become its own. Throws on a kind that is not there. */
export function makePoint(kindId: string, choices: PointChoices): Point {
  const kind = pointKinds.get(kindId);
  if (!kind) throw new RangeError(`no kind of point "${kindId}"`);
  const size = { ...kind.size, ...choices.size };
  const fields = { ...kind.defaults, ...choices.fields };
  const height = choices.place.height ?? assumedHeight(kind, choices.storey);
  return {
    id: choices.id,
    kind: kind.id,
    kindVersion: kind.version,
    name: choices.name ?? kind.label,
    storey: choices.storey,
    place: { ...choices.place, height },
    size,
    connections: kind.connections(size, fields),
    fields,
    thing: choices.thing ?? null,
    option: choices.option,
    sureness: choices.sureness ?? 'seen',
  };
}
