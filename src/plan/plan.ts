import * as v from 'valibot';
import { basis, job } from './records/basis.ts';
import { ground, opening, roof, room, storey, voidRecord, wall } from './records/building.ts';
import { id, record, text } from './records/parts.ts';
import { group, item, leg, node, point, run, stretch } from './records/pipework.ts';
import { acknowledgement, blobRef, listEdit, option, override, thing } from './records/statements.ts';

const mapOf = <S extends v.GenericSchema>(schema: S) => v.record(v.string(), schema);

/** The document: one house, one job. Records by id in flat maps; lengths in mm; nothing derived is stored. */
export const planSchema = record({
  id: id<'plan'>(),
  name: text,
  job,
  basis,
  storeys: mapOf(storey),
  walls: mapOf(wall),
  openings: mapOf(opening),
  rooms: mapOf(room),
  roofs: mapOf(roof),
  grounds: mapOf(ground),
  voids: mapOf(voidRecord),
  points: mapOf(point),
  runs: mapOf(run),
  nodes: mapOf(node),
  legs: mapOf(leg),
  stretches: mapOf(stretch),
  items: mapOf(item),
  groups: mapOf(group),
  options: mapOf(option),
  acknowledgements: mapOf(acknowledgement),
  overrides: mapOf(override),
  listEdits: mapOf(listEdit),
  things: mapOf(thing),
  blobRefs: mapOf(blobRef),
});

export type Plan = v.InferOutput<typeof planSchema>;

/** The maps of records, in the order they are checked and drawn. */
export const RECORD_MAPS = [
  'storeys',
  'walls',
  'openings',
  'rooms',
  'roofs',
  'grounds',
  'voids',
  'points',
  'runs',
  'nodes',
  'legs',
  'stretches',
  'items',
  'groups',
  'options',
  'acknowledgements',
  'overrides',
  'listEdits',
  'things',
  'blobRefs',
] as const satisfies readonly (keyof Plan)[];
export type RecordMap = (typeof RECORD_MAPS)[number];

/** An option at a time: what stands before the work, or after one option of it. */
export interface Case {
  readonly option: string | null;
  readonly when: 'before' | 'after';
}
