import { readdirSync, readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Script } from 'node:vm';
import type { JudgedTest } from './judged-tests.ts';

const SHARED = new URL('../../shared/', import.meta.url);
type Json = Record<string, unknown>;

export const readFolder = (folder: 'tables' | 'sources'): Record<string, Json> =>
  Object.fromEntries(
    readdirSync(new URL(`${folder}/`, SHARED))
      .filter((file) => file.endsWith('.json'))
      .map((file) => [file, JSON.parse(readFileSync(new URL(`${folder}/${file}`, SHARED), 'utf8')) as Json]),
  );

/** One number of one table: the way to it inside the table's rows or its error of method. */
export interface Place {
  readonly table: string;
  readonly way: readonly (string | number)[];
}

const placeName = (p: Place): string => `${p.table}: ${p.way.join('.')}`;

export { placeName };

function numbersIn(value: unknown, way: readonly (string | number)[]): (readonly (string | number)[])[] {
  if (typeof value === 'number') return [way];
  if (Array.isArray(value)) return value.flatMap((v, i) => numbersIn(v, [...way, i]));
  if (typeof value !== 'object' || value === null) return [];
  return Object.entries(value).flatMap(([key, v]) => numbersIn(v, [...way, key]));
}

/** Every number that a table states: its cells, and the error of its method. Keys and digits are words, not figures. */
export function placesOf(tables: Readonly<Record<string, Json>>): Place[] {
  return Object.entries(tables).flatMap(([table, json]) => {
    const rows = (json.rows as readonly Json[]).flatMap((row, i) => numbersIn(row.cells, ['rows', i, 'cells']));
    const error = ['methodErrorLo', 'methodErrorHi'].flatMap((key) => numbersIn(json[key], [key]));
    return [...rows, ...error].map((way) => ({ table, way }));
  });
}

/** The number changed by an eighth and a bit: no slip of rounding, and no factor that anything is built on. */
const changed = (n: number): number => (n === 0 ? 0.37 : Number((n * 1.13 + Math.sign(n) * 0.013).toPrecision(6)));

/** The table with numbers at some places changed. */
export function mutant(json: Json, ways: readonly (readonly (string | number)[])[]): Json {
  const copy = structuredClone(json);
  for (const way of ways) {
    let at: unknown = copy;
    for (const key of way.slice(0, -1)) at = Reflect.get(at as object, key);
    const last = way[way.length - 1] ?? '';
    Reflect.set(at as object, last, changed(Reflect.get(at as object, last) as number));
  }
  return copy;
}

type Load = (require: NodeJS.Require, exports: { all?: readonly JudgedTest[] }) => void;

/** The tests as one script that can be started over with other tables: everything in it is made anew each time. */
export function testsOf(code: string): (tables: Readonly<Record<string, Json>>) => readonly JudgedTest[] {
  const script = new Script(`(function (require, exports) {${code}\n})`, { filename: 'tests.cjs' });
  const load = script.runInThisContext() as Load;
  const require = createRequire(import.meta.url);
  const sources = readFolder('sources');
  return (tables) => {
    Reflect.set(globalThis, 'kicksetTables', { tables, sources });
    const exports: { all?: readonly JudgedTest[] } = {};
    load(require, exports);
    return exports.all ?? [];
  };
}

/** True where it throws, or its promise does not hold. */
export async function fails(test: JudgedTest): Promise<boolean> {
  try {
    await test.run();
    return false;
  } catch {
    return true;
  }
}
