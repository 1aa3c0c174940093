import * as v from 'valibot';
import { date, finite, heightRef, id, mm, optionOf, outline, positiveMm, record, sureness, text, xy } from './parts.ts';

/** `floorMm` is the finished floor above the datum; `ceilingMm` and `buildUpMm` are taken from that floor, up and down. */
export const storey = record({
  id: id<'storey'>(),
  name: text,
  floorMm: mm,
  ceilingMm: positiveMm,
  buildUpMm: positiveMm,
  sureness,
});

/** A body along a centreline from `a` to `b`. Left and right are as seen walking from `a` to `b`. */
export const wall = record({
  id: id<'wall'>(),
  storey: id<'storey'>(),
  a: xy,
  b: xy,
  thicknessMm: positiveMm,
  construction: text,
  /** Solid of the top; null goes up to the ceiling. */
  heightMm: v.nullable(positiveMm),
  /** Shared with another dwelling, or must hold back fire. Null or left out: not told. */
  party: v.exactOptional(v.nullable(v.boolean())),
  fire: v.exactOptional(v.nullable(v.boolean())),
  /** Thickness of the leaf a chase would be cut in, without finishes; and whether its blocks are hollow. */
  leafMm: v.exactOptional(v.nullable(positiveMm)),
  hollow: v.exactOptional(v.nullable(v.boolean())),
  option: optionOf,
  sureness,
});

/** Near edge `alongMm` from the named end of its wall; sill and head above the storey's floor. `opens` null: not known. */
export const opening = record({
  id: id<'opening'>(),
  wall: id<'wall'>(),
  kind: v.picklist(['door', 'window', 'vent', 'archway']),
  name: text,
  from: v.picklist(['a', 'b']),
  alongMm: mm,
  widthMm: positiveMm,
  sillMm: mm,
  headMm: mm,
  opens: v.nullable(v.boolean()),
  hinge: v.nullable(v.picklist(['a', 'b'])),
  swings: v.nullable(v.picklist(['left', 'right'])),
  option: optionOf,
  sureness,
});

/** What a room is called and used for. Its outline is derived: the face of the plan that holds the seed. */
export const room = record({
  id: id<'room'>(),
  storey: id<'storey'>(),
  seed: xy,
  name: text,
  use: text,
  heated: v.nullable(v.boolean()),
  floorMm: v.nullable(mm),
  ceilingMm: v.nullable(positiveMm),
  finishes: text,
  /** What lies on its floor and what its ceiling is made of, where told. */
  floorCovering: v.exactOptional(text),
  ceilingFinish: v.exactOptional(text),
  /** Part of a protected escape route; null: not told. */
  escapeRoute: v.nullable(v.boolean()),
});

/** A plane that bounds height: passes through the eaves line at its height and rises at the pitch, to the line's left. */
export const roof = record({
  id: id<'roof'>(),
  storey: id<'storey'>(),
  outline,
  eaves: record({ a: xy, b: xy, height: heightRef }),
  pitchDeg: finite,
  rafters: v.nullable(record({ centresMm: positiveMm, depthMm: positiveMm, breadthMm: positiveMm })),
  sureness,
});

/** Ground level along the outside: a line of places with their level above the datum. */
export const ground = record({
  id: id<'ground'>(),
  line: v.pipe(v.array(record({ x: mm, y: mm, z: mm })), v.minLength(1)),
  kind: text,
  sureness,
});

const joistException = record({ index: v.pipe(v.number(), v.integer()), offsetMm: mm, what: text });
const bearing = record({ a: xy, b: xy });

/** Joists by the way they run (degrees anticlockwise from x), their centres, and the first centreline. */
export const joists = record({
  kind: v.picklist(['solid', 'engineered', 'metalWeb', 'truss', 'battens', 'unknown']),
  wayDeg: finite,
  centresMm: positiveMm,
  first: xy,
  depthMm: v.nullable(positiveMm),
  breadthMm: v.nullable(positiveMm),
  /** Underside of the timber. */
  bottom: v.nullable(heightRef),
  spanMm: v.nullable(positiveMm),
  exceptions: v.array(joistException),
  /** Figures of these that nobody has seen: taken from what is usual. */
  assumed: v.exactOptional(v.array(v.picklist(['kind', 'centresMm', 'first', 'depthMm', 'breadthMm', 'bottom']))),
});

/** One layer of a solid floor, from the top down. */
const layer = record({ what: text, thicknessMm: positiveMm });

/**
 * A space in a floor, a ceiling, a box, a slab or a wall (a chase): outline less holes, between two heights. `sealed`: a box, an
 * acoustic or sealed ceiling lets no gas out. `layers` and `pourDate` belong to a slab that is there or still to be cast.
 */
export const voidRecord = record({
  id: id<'void'>(),
  storey: id<'storey'>(),
  name: text,
  kind: v.picklist(['floor', 'ceiling', 'boxing', 'slab', 'duct', 'chase']),
  outline,
  holes: v.array(outline),
  bottom: v.nullable(heightRef),
  top: v.nullable(heightRef),
  joists: v.nullable(joists),
  bearings: v.array(bearing),
  ventilated: v.nullable(v.boolean()),
  mayBeCut: v.nullable(v.boolean()),
  sealed: v.exactOptional(v.nullable(v.boolean())),
  /** Free area of its ventilation openings, as measured. */
  ventAreaCm2: v.exactOptional(v.nullable(finite)),
  layers: v.exactOptional(v.array(layer)),
  pourDate: v.exactOptional(v.nullable(date)),
  option: optionOf,
  sureness,
});

export type Storey = v.InferOutput<typeof storey>;
export type Wall = v.InferOutput<typeof wall>;
export type Opening = v.InferOutput<typeof opening>;
export type Room = v.InferOutput<typeof room>;
export type Roof = v.InferOutput<typeof roof>;
export type Ground = v.InferOutput<typeof ground>;
export type Joists = v.InferOutput<typeof joists>;
export type Void = v.InferOutput<typeof voidRecord>;
