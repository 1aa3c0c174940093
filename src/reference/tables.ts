import { readSources, readTables } from './read-tables.ts';
import type { Source } from './schema/source-schema.ts';
import type { Table } from './schema/table-schema.ts';
import { sourceFiles, tableFiles } from './table-files.ts';

const SOURCES = readSources(sourceFiles);
const TABLES = readTables(tableFiles, SOURCES);

/** All tables, sorted by id. */
export const tables = (): readonly Table[] => [...TABLES.values()];
export const sources = (): readonly Source[] => [...SOURCES.values()];

/** Throws on an id no file has: a slip in the code, not a gap in what is known. */
export function table(id: string): Table {
  const found = TABLES.get(id);
  if (!found) throw new Error(`no table "${id}"`);
  return found;
}

export function source(id: string): Source {
  const found = SOURCES.get(id);
  if (!found) throw new Error(`no source "${id}"`);
  return found;
}

/** Topic to table id, as the basis of a plan pins them. */
export type Editions = Readonly<Record<string, string>>;

const TOPICS = new Map<string, Table[]>();
for (const t of TABLES.values()) if (t.topic !== null) TOPICS.set(t.topic, [...(TOPICS.get(t.topic) ?? []), t]);

/** The tables of one topic: its editions, sorted by id. None where no table has the topic. */
export const editionsOf = (topic: string): readonly Table[] => TOPICS.get(topic) ?? [];

/**
 * The edition the plan has pinned, or the default where it pins none. Undefined when it pins a table that is not here:
 * another edition must not stand in for it unasked.
 */
export function edition(topic: string, editions: Editions): Table | undefined {
  const pinned = editions[topic];
  const all = editionsOf(topic);
  if (all.length === 0) throw new Error(`no table has the topic "${topic}"`);
  return all.find((t) => (pinned === undefined ? t.isDefault : t.id === pinned));
}
