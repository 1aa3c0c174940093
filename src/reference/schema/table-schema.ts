import * as v from 'valibot';

const filled = v.pipe(v.string(), v.minLength(1, 'may not be empty'));
const id = v.pipe(v.string(), v.regex(/^[a-z0-9]+(-[a-z0-9]+)*$/, 'an id is lower case words with dashes'));
const finite = v.pipe(v.number(), v.finite());
const sureness = v.picklist(['page', 'quotation', 'derived', 'practice', 'memory']);

/**
 * How a place between two listed keys is read. `none`: only listed keys. `linear`: straight between neighbours.
 * `next-size-up` / `next-size-down`: the nearest listed key at or above / at or below. Nothing ever reads past the ends.
 */
const lookUp = v.picklist(['none', 'linear', 'next-size-up', 'next-size-down']);

const axis = v.strictObject({
  id,
  title: filled,
  unit: v.string(),
  lookUp,
  /** Validity, both ends included; null where the keys are names. */
  from: v.nullable(finite),
  to: v.nullable(finite),
});

/** A figure, a figure with its doubt, a word, or null: the document has a cell here and nobody has read it. */
const cell = v.union([
  finite,
  filled,
  v.null(),
  v.strictObject({
    lo: finite,
    hi: v.nullable(finite),
    value: v.exactOptional(finite),
    sureness: v.exactOptional(sureness),
  }),
]);

const column = v.strictObject({
  key: filled,
  title: v.exactOptional(filled),
  unit: v.string(),
  digits: v.pipe(v.number(), v.integer(), v.minValue(0), v.maxValue(10)),
});

/** A row may be surer or less sure than its table, and may come from another document: it then says so itself. */
const row = v.strictObject({
  key: filled,
  title: v.exactOptional(filled),
  cells: v.array(cell),
  sureness: v.exactOptional(sureness),
  source: v.exactOptional(id),
  clause: v.exactOptional(filled),
  note: v.exactOptional(filled),
});

const trend = v.nullable(v.picklist(['rising', 'falling']));

/**
 * One published table. Column heads are places on `columnAxis`; each column has its own unit, so that a list of
 * properties is a table too. `topic` joins the editions of one thing; exactly one of them is the default.
 * `methodErrorLo` / `methodErrorHi`: how far the true figure may lie from the method's, in `methodErrorUnit`.
 */
export const tableSchema = v.strictObject({
  id,
  title: filled,
  topic: v.nullable(id),
  isDefault: v.boolean(),
  source: id,
  clause: filled,
  sureness,
  rowAxis: axis,
  columnAxis: axis,
  columns: v.pipe(v.array(column), v.minLength(1)),
  rows: v.pipe(v.array(row), v.minLength(1)),
  alongRow: trend,
  downColumn: trend,
  methodErrorLo: v.nullable(finite),
  methodErrorHi: v.nullable(finite),
  methodErrorUnit: v.nullable(filled),
  inForce: v.nullable(v.strictObject({ from: v.nullable(v.string()), to: v.nullable(v.string()) })),
  notes: v.array(filled),
});

export type Table = v.InferOutput<typeof tableSchema>;
export type Axis = Table['rowAxis'];
export type LookUp = Axis['lookUp'];
export type Cell = Table['rows'][number]['cells'][number];
export type Sureness = Table['sureness'];
