import * as v from 'valibot';
import type { Id } from '../ids.ts';
import type { Mm } from '../units.ts';

/**
 * An object that keeps fields it does not know, so that a file from a newer minor version loses nothing here.
 * The type shows only the known fields: code cannot lean on an unknown one.
 */
export function record<E extends v.ObjectEntries>(entries: E): v.ObjectSchema<E, undefined> {
  return v.looseObject(entries) as unknown as v.ObjectSchema<E, undefined>;
}

export function id<K extends string>(): v.GenericSchema<string, Id<K>> {
  return v.pipe(v.string(), v.minLength(1, 'an id may not be empty'), v.maxLength(80)) as v.GenericSchema<
    string,
    Id<K>
  >;
}

/** A house is well inside a kilometre; anything past it is a broken file, and would freeze dashed drawing. */
const FAR_MM = 1_000_000;
export const mm = v.pipe(
  v.number(),
  v.finite('a length must be a finite number'),
  v.minValue(-FAR_MM, 'further than 1 km from the datum'),
  v.maxValue(FAR_MM, 'further than 1 km from the datum'),
) as v.GenericSchema<number, Mm>;
export const positiveMm = v.pipe(
  v.number(),
  v.finite('a length must be a finite number'),
  v.minValue(0, 'a size may not be negative'),
  v.maxValue(FAR_MM, 'longer than 1 km'),
) as v.GenericSchema<number, Mm>;
export const finite = v.pipe(v.number(), v.finite('must be a finite number'));
export const text = v.pipe(v.string(), v.maxLength(20_000, 'longer than 20,000 characters'));
export const date = v.pipe(v.string(), v.isoDate('a date is written year-month-day, as 2026-05-01'));

/** A place in plan, mm from the datum: x to the right of the sheet, y up the sheet. */
export const xy = record({ x: mm, y: mm });
export const xyz = record({ x: mm, y: mm, z: mm });
export const outline = v.pipe(v.array(xy), v.minLength(3, 'an outline needs three corners'), v.maxLength(500));
/** An unread figure: it lies somewhere between the two. */
export const range = record({ lo: finite, hi: finite });

/** Was it looked at, or taken for granted? Assumed things are drawn hollow and named beside every sum they enter. */
export const sureness = v.picklist(['seen', 'assumed']);

/**
 * A height and what it is measured from. It is resolved to z in geometry, never stored as z, so that what was set from
 * a ceiling follows when the ceiling is measured again. `of` is the storey or room (floor, ceiling), the void
 * (voidTop, voidBottom) or the point (connection, with `connection`); null for the datum.
 * `assumed` bounds `mm` where it was not measured.
 */
export const heightRef = record({
  from: v.picklist(['datum', 'floor', 'ceiling', 'voidTop', 'voidBottom', 'connection']),
  of: v.nullable(v.string()),
  mm,
  connection: v.exactOptional(v.string()),
  assumed: v.exactOptional(range),
});

/** On a wall's side, at a distance along from a named end, standing off from its face. Nothing of it is stored as x, y. */
export const hosted = record({
  on: v.literal('wall'),
  wall: id<'wall'>(),
  side: v.picklist(['left', 'right']),
  from: v.picklist(['a', 'b']),
  alongMm: mm,
  standOffMm: mm,
  height: heightRef,
});
/** Free in a storey; `angleDeg` turns its own right-hand axis anticlockwise from the sheet's x. */
export const free = record({ on: v.literal('storey'), x: mm, y: mm, angleDeg: finite, height: heightRef });

/** Which option a thing belongs to; null for everything that was surveyed. */
export const optionOf = v.nullable(id<'option'>());

export type Xy = v.InferOutput<typeof xy>;
export type Xyz = v.InferOutput<typeof xyz>;
export type Range = v.InferOutput<typeof range>;
export type SeenOrAssumed = v.InferOutput<typeof sureness>;
export type HeightRef = v.InferOutput<typeof heightRef>;
export type HeightFrom = HeightRef['from'];
export type HostedPlace = v.InferOutput<typeof hosted>;
export type FreePlace = v.InferOutput<typeof free>;
