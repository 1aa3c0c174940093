import * as v from 'valibot';
import { date, finite, id, mm, record, text } from './parts.ts';

/** What becomes of a surveyed thing when an option is built. A thing with no fate is kept. */
const fate = v.picklist(['keep', 'strip', 'cap']);
export const option = record({ id: id<'option'>(), name: text, note: text, fates: v.record(v.string(), fate) });

/** A finding somebody has seen. It keeps what was found, and opens again when that gets worse. */
export const acknowledgement = record({
  id: id<'acknowledgement'>(),
  key: text,
  note: text,
  by: text,
  on: v.nullable(date),
  found: v.nullable(record({ lo: finite, hi: v.nullable(finite), unit: text })),
  wanted: v.nullable(record({ lo: finite, hi: v.nullable(finite), unit: text })),
});

/** A limit the appliance's own sheet gives, in place of the general one. `scope` is the thing it holds for; null: all. */
export const override = record({
  id: id<'override'>(),
  limit: text,
  scope: v.nullable(v.string()),
  value: finite,
  unit: text,
  note: text,
  page: text,
});

/** A line of the list changed by hand, with the quantity the drawing gave at that moment. `quantity` null: only noted. */
export const listEdit = record({
  id: id<'listEdit'>(),
  option: v.nullable(id<'option'>()),
  piece: text,
  size: text,
  joining: text,
  madeOn: finite,
  quantity: v.nullable(finite),
  note: text,
});

/** A boiler, cylinder, hob… typed once from its sheet and carried inside the plan that uses it. */
export const thing = record({ id: id<'thing'>(), kind: text, name: text, fields: v.record(v.string(), v.unknown()) });

/** A photo or traced plan: its bytes live outside the plan under their hash; this says what it is and where it lies. */
export const blobRef = record({
  id: id<'blobRef'>(),
  hash: id<'blobHash'>(),
  kind: v.picklist(['photo', 'trace', 'sheet']),
  name: text,
  mediaType: text,
  on: v.nullable(v.string()),
  place: v.nullable(
    record({ x: mm, y: mm, mmPerPixel: finite, angleDeg: finite, opacity: finite, locked: v.boolean() }),
  ),
});

export type Option = v.InferOutput<typeof option>;
export type Fate = v.InferOutput<typeof fate>;
export type Acknowledgement = v.InferOutput<typeof acknowledgement>;
export type Override = v.InferOutput<typeof override>;
export type ListEdit = v.InferOutput<typeof listEdit>;
export type Thing = v.InferOutput<typeof thing>;
export type BlobRef = v.InferOutput<typeof blobRef>;
