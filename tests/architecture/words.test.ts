import { describe, expect, test } from 'vitest';
import { repoFiles, textOf } from './repo-files.ts';

// Every pattern is put together from pieces, so that neither this file nor a plain search of the tree trips over it.
const words = (...pieces: string[]): string => pieces.join('');
const anyOf = (list: readonly string[], flags = ''): RegExp => new RegExp(list.join('|'), flags);

/** How the project was made is nobody's business in it. */
const making = anyOf(
  [
    words('trans', 'cript'),
    words('seed', ' document'),
    words('the ', 'video'),
    words('\\bAI ', 'agent'),
    words('sub-?', 'agents?\\b'),
    words('language ', 'model'),
    words('this ', 'session'),
    words('\\bissues? ', '#?\\d'),
    words('\\bchat', 'gpt'),
  ],
  'i',
);

/** Paths of one machine. */
const machine = anyOf([
  words('/wo', 'rk/'),
  words('/tm', 'p/'),
  words('/fa', 'rm/'),
  words('/ro', 'ot/'),
  words('/ho', 'me/\\w'),
  words('/Us', 'ers/\\w'),
]);

/** Work left open, checks switched off, and tests that cannot fail. */
const undone = anyOf([
  words('\\bTO', 'DO\\b'),
  words('\\bFIX', 'ME\\b'),
  words('\\bXX', 'X\\b'),
  words('not ', 'implemented'),
  words('biome-', 'ignore'),
  words('eslint-', 'disable'),
  words('@ts-', '(ignore|nocheck|expect-error)'),
  // Followed as code is: prose may well say that one choice is as good as another.
  words('\\bas ', 'any(?=[;,)\\]}>|&[]|$| as )'),
  words('\\.(skip|only|todo|fix', 'me)\\('),
  words('expect\\(tr', 'ue\\)'),
]);

/** A verdict that only a person may give. The names of the statutory documents and the blank for a name are no verdict. */
const verdict = /\b(approved|compliant|complies)\b/i;
const noVerdict = /approved[ -]document|approved by\b|\b(not|never|nor|neither|cannot be) (approved|compliant)/gi;

const isText = (path: string): boolean => !/\.(png|jpe?g|woff2?|ttf|ico|pdf|gz)$/.test(path);

interface Hit {
  readonly where: string;
  readonly line: string;
}

function hitsIn(path: string, text: string, pattern: RegExp, set: RegExp = /$^/): Hit[] {
  return text.split('\n').flatMap((line, index) => {
    const rest = line.replace(set, '');
    return pattern.test(rest) ? [{ where: `${path}:${index + 1}`, line: rest.trim().slice(0, 160) }] : [];
  });
}

const search = (choose: (path: string) => boolean, pattern: RegExp, allowed?: RegExp): Hit[] =>
  repoFiles()
    .filter((path) => isText(path) && choose(path))
    .flatMap((path) => hitsIn(path, textOf(path), pattern, allowed));

const isLock = (path: string): boolean => path === 'package-lock.json';
const isCode = (path: string): boolean => /^(src|tests|e2e)\/|^vite\.config\.ts$|^\.ci\//.test(path);

describe('words', () => {
  test('nothing tells how the project was made', () => {
    expect(search((path) => !isLock(path), making)).toEqual([]);
  });

  test('nothing names a path of one machine', () => {
    expect(search((path) => !isLock(path), machine)).toEqual([]);
  });

  test('nothing is left undone, switched off or unable to fail', () => {
    expect(search(isCode, undone)).toEqual([]);
  });

  test('the lock names no registry', () => {
    expect(search(isLock, anyOf([words('"resol', 'ved": "http'), words('registry', '\\.')]))).toEqual([]);
  });

  test('no other file names a registry', () => {
    expect(
      search((path) => !isLock(path), anyOf([words('registry\\.', 'npmjs'), words('registry\\.', 'yarnpkg')])),
    ).toEqual([]);
  });

  test('the program gives no verdict', () => {
    expect(search((path) => path.startsWith('src/'), verdict, noVerdict)).toEqual([]);
  });
});

describe('the search itself', () => {
  test.each([
    ['making', making, words('see iss', 'ue 12')],
    ['machine', machine, words('at /wo', 'rk/main')],
    ['undone', undone, words('// TO', 'DO later')],
    ['undone', undone, words('test.sk', "ip('x')")],
    ['undone', undone, words('x as a', 'ny')],
  ])('%s finds what it looks for', (_name, pattern, line) => {
    expect(hitsIn('x', `first\n${line}`, pattern)).toEqual([{ where: 'x:2', line }]);
  });

  test.each([
    ['This layout is approved.', 1],
    ['The run is compliant', 1],
    ['Limits compared, not approved: the registered engineer decides.', 0],
    ['approved by: not told', 0],
    ['Approved Document J, approved', 1],
  ])('verdict in "%s": %i', (line, count) => {
    expect(hitsIn('x', line, verdict, noVerdict)).toHaveLength(count);
  });
});
