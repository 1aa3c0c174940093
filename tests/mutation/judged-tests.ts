import * as expecting from '@vitest/expect';
import * as chai from 'chai';

/** A test that can be run again and again: its name, and what throws where something is wrong. */
export interface JudgedTest {
  readonly name: string;
  readonly run: () => unknown;
}

type Run = (...args: readonly unknown[]) => unknown;
type Rows = readonly unknown[];

const found: JudgedTest[] = [];
const path: string[] = [];

/** Every test that was told since the file was loaded. */
export const judgedTests = (): readonly JudgedTest[] => found;

const asRow = (row: unknown): Rows => (Array.isArray(row) ? row : [row]);
const named = (title: string, row: Rows, i: number): string => `${title} ${i} ${String(row[0]).slice(0, 40)}`;

/** What is done once for the tests of a group, before the first of them is asked. */
const before: (() => Promise<unknown>)[][] = [[]];

export function beforeAll(run: Run): void {
  let done: Promise<unknown> | undefined;
  before[before.length - 1]?.push(() => {
    done ??= Promise.resolve(run());
    return done;
  });
}

/** A test is a name and what is run, with or without options between them. */
function told(name: string, ...rest: readonly unknown[]): void {
  const run = rest.find((part): part is Run => typeof part === 'function');
  if (!run) throw new Error(`${name}: nothing to run`);
  const first = before.flat();
  const afterThem = async () => {
    for (const step of first) await step();
    return run();
  };
  found.push({ name: [...path, name].join(' > '), run: first.length === 0 ? run : afterThem });
}

function group(name: string, tell: Run, args: Rows = []): void {
  path.push(name);
  before.push([]);
  tell(...args);
  before.pop();
  path.pop();
}

export const test = Object.assign((name: string, ...rest: Rows) => told(name, ...rest), {
  each: (rows: Rows) => (title: string, run: Run) => {
    rows.forEach((row, i) => {
      told(named(title, asRow(row), i), () => run(...asRow(row)));
    });
  },
});
export const it = test;
export const describe = Object.assign((name: string, tell: Run) => group(name, tell), {
  each: (rows: Rows) => (title: string, tell: Run) => {
    rows.forEach((row, i) => {
      group(named(title, asRow(row), i), tell, asRow(row));
    });
  },
});

chai.use(expecting.JestExtend);
chai.use(expecting.JestChaiExpect);
chai.use(expecting.JestAsymmetricMatchers);

function expectOf(value: unknown, message?: string) {
  return chai.expect(value, message);
}
const asymmetric: object = Reflect.get(globalThis, expecting.ASYMMETRIC_MATCHERS_OBJECT) ?? {};
export const expect = Object.assign(expectOf, chai.expect, asymmetric);
expecting.setState(
  { assertionCalls: 0, isExpectingAssertions: false, expectedAssertionsNumber: null },
  expect as never,
);
Reflect.set(globalThis, expecting.GLOBAL_EXPECT, expect);
