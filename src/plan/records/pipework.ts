import * as v from 'valibot';
import {
  finite,
  free,
  heightRef,
  hosted,
  id,
  mm,
  optionOf,
  positiveMm,
  range,
  record,
  sureness,
  text,
  xyz,
} from './parts.ts';

/**
 * Services by their id in the catalogue. A string, so that a file with a service this version does not know still opens.
 */
const service = v.pipe(v.string(), v.minLength(1), v.maxLength(60));

/**
 * Where a pipe meets a point: place and facing in the point's own frame (x to the right as one faces it, y towards the
 * reader, z up). `size` is the nominal size or thread as the sheet of the appliance gives it.
 */
export const connection = record({
  id: id<'connection'>(),
  service,
  label: text,
  size: v.nullable(text),
  at: xyz,
  facing: v.picklist(['up', 'down', 'left', 'right', 'front', 'back']),
});

/** A figure a point carries: a number, a range where it was not read, a word, yes / no, or null where not told. */
export const field = v.nullable(v.union([finite, range, text, v.boolean()]));

/** Anything with a place that pipes meet or keep away from. It keeps its own sizes: the catalogue only gave defaults. */
export const point = record({
  id: id<'point'>(),
  kind: v.pipe(v.string(), v.minLength(1), v.maxLength(60)),
  kindVersion: v.pipe(v.number(), v.integer()),
  name: text,
  storey: id<'storey'>(),
  place: v.variant('on', [free, hosted]),
  size: record({ widthMm: positiveMm, depthMm: positiveMm, heightMm: positiveMm }),
  connections: v.array(connection),
  fields: v.record(v.string(), field),
  thing: v.nullable(id<'thing'>()),
  option: optionOf,
  sureness,
});

const joining = v.picklist([
  'endFeed',
  'solderRing',
  'compression',
  'press',
  'pushFit',
  'threaded',
  'solvent',
  'electrofusion',
]);

/** A line of pipe of one service. `joining` and `turns` are how its fittings are made unless a node says otherwise. */
export const run = record({
  id: id<'run'>(),
  service,
  name: text,
  joining: v.nullable(joining),
  turns: v.picklist(['elbow', 'bend']),
  option: optionOf,
});

/** A place only: free in a storey, or a connection of a point, whose place is then the point's business alone. */
export const node = record({
  id: id<'node'>(),
  place: v.variant('on', [
    record({ on: v.literal('storey'), storey: id<'storey'>(), x: mm, y: mm, height: heightRef }),
    record({ on: v.literal('connection'), point: id<'point'>(), connection: id<'connection'>() }),
  ]),
  turn: v.nullable(v.picklist(['elbow', 'bend'])),
  option: optionOf,
});

/** Kind and size are ids of the tube catalogue ('copper', '22x0.9'); size null where nobody could read it. */
export const tube = record({ kind: v.pipe(v.string(), v.minLength(1), v.maxLength(60)), size: v.nullable(text) });
const insulation = v.nullable(record({ kind: text, thicknessMm: positiveMm }));

/** One straight piece between two nodes. */
export const leg = record({
  id: id<'leg'>(),
  run: id<'run'>(),
  a: id<'node'>(),
  b: id<'node'>(),
  tube,
  insulation,
  option: optionOf,
  sureness,
});

/** Existing pipe nobody can see, between two nodes: how long and with how many bends is only bounded. */
export const stretch = record({
  id: id<'stretch'>(),
  run: id<'run'>(),
  a: id<'node'>(),
  b: id<'node'>(),
  lengthMm: range,
  bends: range,
  tube,
  option: optionOf,
});

/** A valve, filter, drain cock… in line at a node. `along` points it where a node has more than one way through. */
export const item = record({
  id: id<'item'>(),
  node: id<'node'>(),
  kind: v.pipe(v.string(), v.minLength(1), v.maxLength(60)),
  name: text,
  along: v.nullable(id<'leg'>()),
  fields: v.record(v.string(), field),
  option: optionOf,
  sureness,
});

/** Runs that travel together: members in order, centre to centre. The only constraint that is kept. */
export const group = record({
  id: id<'group'>(),
  name: text,
  members: v.array(id<'run'>()),
  spacingMm: positiveMm,
});

export type Connection = v.InferOutput<typeof connection>;
export type Facing = Connection['facing'];
export type Field = v.InferOutput<typeof field>;
export type Point = v.InferOutput<typeof point>;
export type Joining = v.InferOutput<typeof joining>;
export type Run = v.InferOutput<typeof run>;
export type PlanNode = v.InferOutput<typeof node>;
export type Tube = v.InferOutput<typeof tube>;
export type Leg = v.InferOutput<typeof leg>;
export type Stretch = v.InferOutput<typeof stretch>;
export type Item = v.InferOutput<typeof item>;
export type Group = v.InferOutput<typeof group>;
