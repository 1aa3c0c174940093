import * as v from 'valibot';
import { type Plan, planSchema, RECORD_MAPS, type RecordMap } from '../../plan/plan.ts';
import { danglingReferences } from '../../plan/references.ts';
import { nameOf, type Problem, type ProblemMap } from './plan-problem.ts';

export type RawObject = Record<string, unknown>;

export const isObject = (value: unknown): value is RawObject =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

/** Names every object answers to from birth. As an id such a name would be found where it is not. */
export const isReserved = (name: string): boolean => name in Object.prototype;

const KINDS: Readonly<Record<string, string>> = {
  string: 'text',
  number: 'a number',
  boolean: 'yes or no',
  Object: 'a group of fields',
  Array: 'a list',
  null: 'nothing',
  undefined: 'nothing',
  NaN: 'no number',
};

/** What a schema words for a programmer, in plain words. */
function plain(issue: v.BaseIssue<unknown>): string {
  if (issue.received === 'undefined') return 'is missing';
  const wanted = (issue.expected ?? '').replace(/\b\w+\b/g, (word) => KINDS[word] ?? word).replaceAll(' | ', ' or ');
  const found = KINDS[issue.received] ?? issue.received;
  return `${wanted.replaceAll('"', "'")} was expected, ${found.replaceAll('"', "'").slice(0, 60)} stands there`;
}

function* faultsOf(schema: v.GenericSchema, value: unknown, map: ProblemMap, id: string): Generator<Problem> {
  const result = v.safeParse(schema, value, { message: plain });
  if (result.success) return;
  const seen = new Set<string>();
  for (const issue of result.issues) {
    const field = v.getDotPath(issue) ?? '';
    if (seen.has(field)) continue;
    seen.add(field);
    yield { map, id, field, why: issue.message };
  }
}

/** Names and numbers inside a value that would be lost or would do harm, however deep and in whatever field. */
export function* hiddenFaults(value: unknown, map: ProblemMap, id: string, path: string): Generator<Problem> {
  if (typeof value === 'number' && !Number.isFinite(value)) {
    yield { map, id, field: path, why: 'a number too large to be kept' };
  } else if (Array.isArray(value)) {
    for (const [i, item] of value.entries()) yield* hiddenFaults(item, map, id, `${path}.${i}`);
  } else if (isObject(value)) {
    for (const [name, item] of Object.entries(value)) {
      const field = path === '' ? name : `${path}.${name}`;
      if (name === '__proto__') yield { map, id, field, why: 'a field may not have this name' };
      else yield* hiddenFaults(item, map, id, field);
    }
  }
}

/** Everything wrong with one record, in itself. */
export function* recordFaults(map: RecordMap, id: string, value: unknown): Generator<Problem> {
  if (isReserved(id)) yield { map, id, field: 'id', why: 'a record may not have this name' };
  const schema = planSchema.entries[map].value as v.GenericSchema;
  const told = [...faultsOf(schema, value, map, id)];
  yield* told;
  for (const fault of hiddenFaults(value, map, id, '')) if (!told.some((t) => t.field === fault.field)) yield fault;
  if (isObject(value) && typeof value.id === 'string' && value.id !== id) {
    yield { map, id, field: 'id', why: `calls itself '${value.id.slice(0, 60)}'` };
  }
}

const isMap = (name: string): name is RecordMap => (RECORD_MAPS as readonly string[]).includes(name);

/** Everything wrong with the plan's own fields: its name, the basis, a map of records that is not there. */
export function* planFaults(raw: RawObject): Generator<Problem> {
  for (const [name, schema] of Object.entries(planSchema.entries)) {
    if (!isMap(name)) {
      for (const fault of faultsOf(schema as v.GenericSchema, raw[name], 'plan', '')) {
        yield { ...fault, field: fault.field === '' ? name : `${name}.${fault.field}` };
      }
    } else if (!isObject(raw[name])) {
      yield {
        map: 'plan',
        id: '',
        field: name,
        why: raw[name] === undefined ? 'is missing' : 'is not a group of records',
      };
    }
  }
  for (const [name, value] of Object.entries(raw)) {
    if (isMap(name)) continue;
    if (name === '__proto__') yield { map: 'plan', id: '', field: name, why: 'a field may not have this name' };
    else yield* hiddenFaults(value, 'plan', '', name);
  }
}

/** Pointers that lead nowhere. Only for a plan whose records are sound. */
export function danglingFaults(plan: Plan): Problem[] {
  return danglingReferences(plan).map(({ map, id, field, toMap, toId }) => ({
    map,
    id,
    field,
    why: `names ${nameOf(toMap, toId)}, which is not in the plan`,
  }));
}

/** Everything wrong with a plan as it stands in a file; empty where it may be edited. */
export function checkPlan(raw: RawObject): Problem[] {
  const problems = [...planFaults(raw)];
  for (const map of RECORD_MAPS) {
    const records = raw[map];
    if (isObject(records))
      for (const [id, value] of Object.entries(records)) problems.push(...recordFaults(map, id, value));
  }
  return problems.length > 0 ? problems : danglingFaults(raw as unknown as Plan);
}
