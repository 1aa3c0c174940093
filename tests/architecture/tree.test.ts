import { basename } from 'node:path';
import { describe, expect, test } from 'vitest';
import { countDefaultExports, readLinks } from './module-links.ts';
import { codeFiles, repoFiles, textOf } from './repo-files.ts';

const atTheTop = new Set([
  '.ci',
  '.gitignore',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'demo-plans',
  'e2e',
  'package-lock.json',
  'package.json',
  'shared',
  'src',
  'tests',
  'tsconfig.json',
  'vite.config.ts',
]);

const catchAll = new Set(['common', 'helpers', 'misc', 'utils']);
const barrels = new Set(['src/editor/index.ts']);
const mostLines = 400;

/** Names with capitals by old custom, and folders that the test runner names. */
const customary = /^(README\.md|DEVELOPERS\.md|LICENSE|OFL\.txt|__snapshots__|\.ci|\.gitignore)$/;
const kebab = /^[a-z0-9]+(-[a-z0-9]+)*(\.[a-z0-9]+(-[a-z0-9]+)*)*$/;

/** Where each kind of one-file part lives. A registry collects them, and takes the default export of each. */
const roles: Readonly<Record<string, string | readonly string[]>> = {
  rule: 'src/engine/rules/',
  sum: 'src/engine/sums/',
  section: 'src/engine/sections/',
  point: 'src/catalogue/points/',
  service: 'src/catalogue/services/',
  tube: 'src/catalogue/tubes/',
  fitting: 'src/catalogue/fittings/',
  item: 'src/catalogue/items/',
  command: ['src/editor/commands/', 'src/editor/later/'],
  tool: ['src/editor/tools/', 'src/editor/later/'],
  sheet: 'src/drawing/sheet/kinds/',
};

const roleOf = (path: string): string | undefined => /\.([a-z]+)\.ts$/.exec(path)?.[1];
const roleFiles = codeFiles().filter((path) => Object.hasOwn(roles, roleOf(path) ?? ''));
const parts = (path: string): string[] => path.split('/');

describe('the tree', () => {
  test('has only the agreed names at the top', () => {
    const names = new Set(repoFiles().map((path) => parts(path)[0] ?? ''));
    expect([...names].filter((name) => !atTheTop.has(name))).toEqual([]);
  });

  test('has no folder for things without a place', () => {
    expect(
      repoFiles().filter((path) =>
        parts(path)
          .slice(0, -1)
          .some((name) => catchAll.has(name)),
      ),
    ).toEqual([]);
    expect(repoFiles().filter((path) => catchAll.has(basename(path).split('.')[0] ?? ''))).toEqual([]);
  });

  test('has no barrel but the agreed one', () => {
    expect(codeFiles().filter((path) => /^index\.tsx?$/.test(basename(path)) && !barrels.has(path))).toEqual([]);
  });

  test('is named in lower case with hyphens', () => {
    const odd = repoFiles().filter((path) => !parts(path).every((name) => kebab.test(name) || customary.test(name)));
    expect(odd).toEqual([]);
  });

  test(`has no file of code over ${mostLines} lines`, () => {
    const code = repoFiles().filter((path) => /^src\/.*\.(tsx?|mjs|css)$/.test(path));
    const long = code
      .map((path) => ({ path, lines: textOf(path).replace(/\n$/, '').split('\n').length }))
      .filter(({ lines }) => lines > mostLines);
    expect(long).toEqual([]);
  });
});

describe('parts that are one file each', () => {
  test('lie where their registry looks', () => {
    const lost = (path: string) => ![roles[roleOf(path)!]!].flat().some((place) => path.startsWith(place));
    expect(roleFiles.filter(lost)).toEqual([]);
  });

  test('have exactly one default export', () => {
    expect(roleFiles.filter((path) => countDefaultExports(path, textOf(path)) !== 1)).toEqual([]);
  });

  test('are collected by a pattern, not by a list', () => {
    const patterns = codeFiles().flatMap((path) =>
      readLinks(path, textOf(path))
        .filter(({ kind }) => kind === 'glob')
        .map(({ specifier }) => specifier ?? ''),
    );
    const present = new Set(roleFiles.map((path) => roleOf(path)!));
    expect([...present].filter((role) => !patterns.some((text) => text.endsWith(`.${role}.ts`)))).toEqual([]);
  });
});

describe('test files', () => {
  test('each expect something', () => {
    const tests = repoFiles().filter((path) => /\.(test|spec)\.tsx?$/.test(path));
    expect(tests.filter((path) => !/\b(expect|assert)\b/.test(textOf(path)))).toEqual([]);
  });

  test('are named so that a runner finds them', () => {
    const stray = repoFiles().filter((path) => /\.(test|spec)\./.test(path));
    const found = /^(tests\/.*\.test\.ts|e2e\/.*\.spec\.ts)$/;
    const kept = /^tests\/.*\/__snapshots__\//;
    expect(stray.filter((path) => !found.test(path) && !kept.test(path))).toEqual([]);
  });
});
