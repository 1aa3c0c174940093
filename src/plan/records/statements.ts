import * as v from 'valibot';
import { date, finite, id, mm, positiveMm, record, text } from './parts.ts';
import { connection } from './pipework.ts';

/** What becomes of a surveyed thing when an option is built. A thing with no fate is kept. */
const fate = v.picklist(['keep', 'strip', 'cap']);
export const option = record({ id: id<'option'>(), name: text, note: text, fates: v.record(v.string(), fate) });

/** A place in a picture, pixels from its upper left. */
const pixel = record({ x: finite, y: finite });

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
export const thing = record({
  id: id<'thing'>(),
  kind: text,
  name: text,
  fields: v.record(v.string(), v.unknown()),
  /** Case and tails as its sheet gives them, in the frame of a point. Left out: as its kind makes them. */
  size: v.exactOptional(record({ widthMm: positiveMm, depthMm: positiveMm, heightMm: positiveMm })),
  connections: v.exactOptional(v.array(connection)),
});

/**
 * A photo or traced plan: its bytes live outside the plan under their hash; this says what it is and where it lies.
 * `on` is the storey or the wall face ("WALL:left") a trace lies under, or the thing a photo is of. `place.x`, `place.y` is
 * where the picture's lower left corner lies, in mm of that plane. With `square`, four corners in the picture (pixels from
 * its upper left; lower left, lower right, upper right, upper left of something upright and known) lie on a rectangle of that size, whose
 * lower left corner then is at the place. `pin` is where a photo was taken of.
 */
export const blobRef = record({
  id: id<'blobRef'>(),
  hash: id<'blobHash'>(),
  kind: v.picklist(['photo', 'trace', 'sheet']),
  name: text,
  mediaType: text,
  on: v.nullable(v.string()),
  place: v.nullable(
    record({
      x: mm,
      y: mm,
      mmPerPixel: finite,
      angleDeg: finite,
      opacity: finite,
      locked: v.boolean(),
      square: v.exactOptional(
        record({ corners: v.pipe(v.array(pixel), v.length(4)), widthMm: positiveMm, heightMm: positiveMm }),
      ),
    }),
  ),
  /** Width and height in pixels, as it is kept. */
  pixels: v.exactOptional(record({ width: finite, height: finite })),
  pin: v.exactOptional(v.nullable(record({ storey: id<'storey'>(), x: mm, y: mm }))),
});

export type Option = v.InferOutput<typeof option>;
export type Fate = v.InferOutput<typeof fate>;
export type Acknowledgement = v.InferOutput<typeof acknowledgement>;
export type Override = v.InferOutput<typeof override>;
export type ListEdit = v.InferOutput<typeof listEdit>;
export type Thing = v.InferOutput<typeof thing>;
export type BlobRef = v.InferOutput<typeof blobRef>;
