import type { JudgedTest } from './judged-tests.ts';
import { fails, mutant, type Place } from './mutants.ts';

type Tables = Readonly<Record<string, Record<string, unknown>>>;
type Load = (tables: Tables) => readonly JudgedTest[];

/** Names of tests that speak of something else than the figure, and fail whatever is changed or whenever nothing is. */
export interface Hunt {
  readonly tables: Tables;
  readonly load: Load;
  readonly deaf: ReadonlySet<string>;
}

/** Tests that fail with the tables as they are: here they judge nothing. */
export async function deafTests(tables: Tables, load: Load): Promise<ReadonlySet<string>> {
  const deaf = new Set<string>();
  for (const test of load(tables)) if (await fails(test)) deaf.add(test.name);
  return deaf;
}

const noticed = 'the tests do not even start';

/**
 * The first test that notices a number changed, those of `likely` asked first and, unless `only`, then all. Null: nobody does.
 */
export async function whoNotices(
  { tables, load, deaf }: Hunt,
  place: Place,
  likely: readonly string[],
  only: boolean,
): Promise<string | null> {
  let tests: readonly JudgedTest[];
  try {
    tests = load({ ...tables, [place.table]: mutant(tables[place.table] ?? {}, [place.way]) });
  } catch {
    return noticed;
  }
  const first = new Set(likely);
  const asked = tests.filter((t) => first.has(t.name));
  const rest = only ? [] : tests.filter((t) => !first.has(t.name));
  for (const test of [...asked, ...rest]) {
    if (!deaf.has(test.name) && (await fails(test))) return test.name;
  }
  return null;
}

/**
 * Every test that notices when all numbers of a table are changed at once: no other is asked about one of them alone. Null
 * where the tests then do not even start, so that nobody is likelier than another.
 */
export async function likelyFor({ tables, load, deaf }: Hunt, table: string, ways: readonly Place['way'][]) {
  try {
    const found: string[] = [];
    for (const test of load({ ...tables, [table]: mutant(tables[table] ?? {}, ways) })) {
      if (!deaf.has(test.name) && (await fails(test))) found.push(test.name);
    }
    return found;
  } catch {
    return null;
  }
}
