import * as v from 'valibot';
import { type Connection, type Field, field, type Point } from '../plan/records/pipework.ts';
import type { Thing } from '../plan/records/statements.ts';
import type { Fields, Size } from './define-point.ts';
import { pointKinds } from './point-kinds.ts';
import { sayField } from './say-point.ts';

/** Field of a thing alone: false until its figures were typed from a sheet. A point made from such a thing is assumed. */
export const SHEET_READ = 'sheetRead';

export interface ThingParts {
  readonly size: Size;
  readonly fields: Fields;
  readonly connections: Connection[];
  readonly sureness: Point['sureness'];
}

/** Keys of what a sheet says of a kind: all it asks but what is found or set in the house. */
const sheetKeys = (kind: string): ReadonlySet<string> =>
  new Set(pointKinds.get(kind)?.fields.flatMap((f) => (f.survey === true ? [] : [f.key])));

/** A thing's fields as a point may carry them; what no form asks (from a newer version) stays with the thing. */
function fieldsOf(thing: Thing): Fields {
  const asked = sheetKeys(thing.kind);
  return Object.fromEntries(
    Object.entries(thing.fields).flatMap(([key, value]): [string, Field][] => {
      const read = v.safeParse(field, value);
      return asked.has(key) && read.success ? [[key, read.output]] : [];
    }),
  );
}

/** What a point made from a thing has: its own size and tails where the sheet gave them, else those of its kind. */
export function partsOf(thing: Thing): ThingParts {
  const kind = pointKinds.get(thing.kind);
  if (!kind) throw new RangeError(`no kind of point "${thing.kind}"`);
  const size = { ...(thing.size ?? kind.size) };
  const fields = fieldsOf(thing);
  const connections = thing.connections ?? kind.connections(size, { ...kind.defaults, ...fields });
  return {
    size,
    fields,
    connections: connections.map((c) => ({ ...c, at: { ...c.at } })),
    sureness: thing.fields[SHEET_READ] === false ? 'assumed' : 'seen',
  };
}

/** Everything a point knows of its appliance, as a thing to be kept. */
export function thingFrom(point: Point, id: string, name: string): Thing {
  const keys = sheetKeys(point.kind);
  const fields = Object.fromEntries(Object.entries(point.fields).filter(([key]) => keys.has(key)));
  return {
    id,
    kind: point.kind,
    name,
    fields: { ...fields, ...(point.sureness === 'assumed' ? { [SHEET_READ]: false } : {}) },
    size: { ...point.size },
    connections: point.connections.map((c) => ({ ...c, at: { ...c.at } })),
  };
}

/** One thing that reads otherwise in the sheet than on the drawing. */
export interface SheetChange {
  readonly label: string;
  readonly now: string;
  readonly sheet: string;
}

const same = (a: unknown, b: unknown): boolean => JSON.stringify(a ?? null) === JSON.stringify(b ?? null);
const NOT_TOLD = 'not told';

const sayTail = (c: Connection): string =>
  `${Math.round(c.at.x)} across, ${Math.round(c.at.y)} out, ${c.size ?? 'size not told'}`;

/** What would change on a point if it took the sheet: figures, case and tails. Empty where they agree. */
export function sheetChanges(point: Point, thing: Thing): readonly SheetChange[] {
  const parts = partsOf(thing);
  const specs = pointKinds.get(thing.kind)?.fields ?? [];
  const changed: SheetChange[] = [];
  for (const spec of specs) {
    if (!(spec.key in parts.fields)) continue;
    const [now, sheet] = [point.fields[spec.key], parts.fields[spec.key]];
    if (same(now === '' ? null : now, sheet === '' ? null : sheet)) continue;
    changed.push({
      label: spec.label,
      now: sayField(spec, now) ?? NOT_TOLD,
      sheet: sayField(spec, sheet) ?? NOT_TOLD,
    });
  }
  const saySize = (s: Size): string => `${s.widthMm} x ${s.depthMm} x ${s.heightMm}`;
  if (!same(point.size, parts.size)) {
    changed.push({ label: 'Case', now: saySize(point.size), sheet: saySize(parts.size) });
  }
  for (const c of parts.connections) {
    const here = point.connections.find((d) => d.id === c.id);
    if (here && same(here, c)) continue;
    changed.push({ label: `${c.label} tail`, now: here ? sayTail(here) : 'none', sheet: sayTail(c) });
  }
  for (const c of point.connections) {
    if (!parts.connections.some((d) => d.id === c.id)) {
      changed.push({ label: `${c.label} tail`, now: sayTail(c), sheet: 'none' });
    }
  }
  return changed;
}
