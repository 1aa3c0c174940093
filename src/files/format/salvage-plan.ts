import * as v from 'valibot';
import { type Plan, planSchema, RECORD_MAPS, type RecordMap } from '../../plan/plan.ts';
import { danglingReferences, type Reference } from '../../plan/references.ts';
import { hiddenFaults, isObject, isReserved, type RawObject, recordFaults } from './check-plan.ts';
import { nameOf, type Problem } from './plan-problem.ts';

export interface Salvage {
  readonly plan: Plan;
  /** Everything the salvaged plan lacks or holds differently from the file. */
  readonly dropped: readonly Problem[];
}

/** What stands in for a field of the plan that cannot be read: nothing told, so that no sum rests on a guess. */
const UNTOLD: Readonly<Record<'id' | 'name' | 'job' | 'basis', unknown>> = {
  id: 'salvaged',
  name: 'Salvaged job',
  job: { address: '', customer: '', owner: '', reason: '', note: '' },
  basis: {
    surveyDate: null,
    gas: 'natural',
    calorificValueMJPerM3: null,
    editions: {},
    designFlowC: null,
    designReturnC: null,
  },
};

/** A copy without names that may not be used; numbers too large to be kept become nothing. */
function clean(value: unknown): unknown {
  if (typeof value === 'number' && !Number.isFinite(value)) return null;
  if (Array.isArray(value)) return value.map(clean);
  if (!isObject(value)) return value;
  const copy: RawObject = {};
  for (const [name, item] of Object.entries(value)) if (name !== '__proto__') copy[name] = clean(item);
  return copy;
}

const isMap = (name: string): name is RecordMap => (RECORD_MAPS as readonly string[]).includes(name);
const isSound = (map: RecordMap, id: string, value: unknown): boolean => [...recordFaults(map, id, value)].length === 0;

/** Everything new hangs on its option: an empty one under the same id keeps all of it. */
function emptyOption(id: string, dropped: Problem[]): RawObject {
  dropped.push({ map: 'options', id, field: '', why: 'its name and fates are lost' });
  return { id, name: id, note: '', fates: {} };
}

function soundRecords(map: RecordMap, records: RawObject, dropped: Problem[]): RawObject {
  const kept: RawObject = {};
  for (const [id, raw] of Object.entries(records)) {
    if (isReserved(id)) {
      dropped.push({ map, id, field: '', why: 'left out' });
      continue;
    }
    const value = clean(raw);
    if (isSound(map, id, value)) {
      kept[id] = value;
      for (const lost of hiddenFaults(raw, map, id, '')) dropped.push({ ...lost, why: 'left out' });
    } else if (map === 'options') {
      kept[id] = emptyOption(id, dropped);
    } else {
      dropped.push({ map, id, field: '', why: 'left out' });
    }
  }
  return kept;
}

/** Lets go of a pointer where the record stands without it; null where it does not. */
function without(map: RecordMap, field: string, record: RawObject, toId: string): RawObject | null {
  if (map === 'points' && field === 'thing') return { ...record, thing: null };
  if (map === 'items' && field === 'along') return { ...record, along: null };
  if (map === 'voids' && (field === 'bottom' || field === 'top')) return { ...record, [field]: null };
  if (map === 'voids' && field === 'joists.bottom' && isObject(record.joists)) {
    return { ...record, joists: { ...record.joists, bottom: null } };
  }
  if (map === 'groups' && Array.isArray(record.members)) {
    return { ...record, members: record.members.filter((member) => member !== toId) };
  }
  return null;
}

function letGo(plan: RawObject, r: Reference, dropped: Problem[]): void {
  const records = plan[r.map] as RawObject;
  const record = records[r.id];
  const targets = plan[r.toMap] as RawObject;
  if (!isObject(record) || Object.hasOwn(targets, r.toId)) return;
  if (r.toMap === 'options' && !isReserved(r.toId)) {
    targets[r.toId] = emptyOption(r.toId, dropped);
    return;
  }
  const rest = without(r.map, r.field, record, r.toId);
  const lost = nameOf(r.toMap, r.toId);
  if (rest === null) {
    delete records[r.id];
    dropped.push({ map: r.map, id: r.id, field: '', why: `left out, because ${lost} is not there` });
  } else {
    records[r.id] = rest;
    dropped.push({ map: r.map, id: r.id, field: r.field, why: `no longer names ${lost}, which is not there` });
  }
}

/**
 * As much of a broken plan as is sound: records that cannot be read are left out, then whatever hung on them, over and
 * over until every pointer leads somewhere. Null where there is nothing that looks like a plan.
 */
export function salvagePlan(raw: unknown): Salvage | null {
  if (!isObject(raw) || !RECORD_MAPS.some((map) => isObject(raw[map]))) return null;
  const dropped: Problem[] = [];
  const plan: RawObject = {};
  for (const [name, value] of Object.entries(raw)) {
    if (name === '__proto__') dropped.push({ map: 'plan', id: '', field: name, why: 'left out' });
    else if (isMap(name)) plan[name] = isObject(value) ? soundRecords(name, value, dropped) : {};
    else {
      plan[name] = clean(value);
      for (const lost of hiddenFaults(value, 'plan', '', name)) dropped.push({ ...lost, why: 'left out' });
    }
  }
  for (const [name, untold] of Object.entries(UNTOLD)) {
    const schema = planSchema.entries[name as keyof typeof UNTOLD] as v.GenericSchema;
    if (v.is(schema, plan[name])) continue;
    plan[name] = untold;
    dropped.push({ map: 'plan', id: '', field: name, why: 'cannot be read: nothing is told there now' });
  }
  for (const map of RECORD_MAPS) {
    if (isObject(raw[map])) continue;
    plan[map] = {};
    dropped.push({ map: 'plan', id: '', field: map, why: 'cannot be read: empty now' });
  }
  const whole = plan as unknown as Plan;
  for (let lost = danglingReferences(whole); lost.length > 0; lost = danglingReferences(whole)) {
    for (const reference of lost) letGo(plan, reference, dropped);
  }
  return { plan: whole, dropped };
}
