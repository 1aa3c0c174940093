import { describe, expect, test } from 'vitest';
import { faultOf, type Surroundings } from './check-links.ts';
import { layerOf, mayImport } from './layers.ts';
import { type Link, readLinks } from './module-links.ts';
import { codeFiles, isRepoFile, repoFiles, textOf } from './repo-files.ts';

const { dependencies } = JSON.parse(textOf('package.json')) as { dependencies: Record<string, string> };
const here: Surroundings = { isFile: isRepoFile, dependencies: new Set(Object.keys(dependencies)) };

const faultsIn = (path: string, code: string, around: Surroundings): string[] =>
  readLinks(path, code).flatMap((link) => faultOf(path, link, around) ?? []);

describe('imports in src', () => {
  test('every file lies in a known layer', () => {
    const files = repoFiles().filter((path) => path.startsWith('src/'));
    expect(files.length).toBeGreaterThan(0);
    expect(files.filter((path) => layerOf(path) === undefined)).toEqual([]);
  });

  test('every link keeps to the matrix', () => {
    const faults = codeFiles().flatMap((path) =>
      faultsIn(path, textOf(path), here).map((fault) => `${path}: ${fault}`),
    );
    expect(faults).toEqual([]);
  });

  test('the matrix has no circle', () => {
    const order: string[] = [];
    const visit = (layer: string, above: readonly string[]): void => {
      expect(above).not.toContain(layer);
      for (const below of mayImport[layer] ?? []) visit(below, [...above, layer]);
      if (!order.includes(layer)) order.push(layer);
    };
    for (const layer of Object.keys(mayImport)) visit(layer, []);
    expect([...order].sort()).toEqual(Object.keys(mayImport).sort());
  });
});

describe('the reader of links', () => {
  const kinds: [string, Link][] = [
    ["import { a } from './a.ts';", { kind: 'import', specifier: './a.ts' }],
    ["import './a.css';", { kind: 'import', specifier: './a.css' }],
    ["import type { A } from './a.ts';", { kind: 'import', specifier: './a.ts' }],
    ["export type { A } from './a.ts';", { kind: 'import', specifier: './a.ts' }],
    ["export * from './a.ts';", { kind: 'import', specifier: './a.ts' }],
    ["export * as a from './a.ts';", { kind: 'import', specifier: './a.ts' }],
    ["const a = await import('./a.ts');", { kind: 'import', specifier: './a.ts' }],
    ['const a = await import(`./a.ts`);', { kind: 'import', specifier: './a.ts' }],
    ["let a: import('./a.ts').A;", { kind: 'import', specifier: './a.ts' }],
    ["let a: typeof import('./a.ts');", { kind: 'import', specifier: './a.ts' }],
    ["const a = require('./a.ts');", { kind: 'import', specifier: './a.ts' }],
    ["const a = import.meta.glob<A>('./x/*.ts', { eager: true });", { kind: 'glob', specifier: './x/*.ts' }],
    ["const a = import.meta.glob(['./x/*.ts']);", { kind: 'glob', specifier: './x/*.ts' }],
    ["new Worker(new URL('./a.ts', import.meta.url), { type: 'module' });", { kind: 'url', specifier: './a.ts' }],
    ['const a = await import(name);', { kind: 'import', specifier: undefined }],
  ];
  test.each(kinds)('%s', (code, link) => {
    expect(readLinks('src/plan/x.ts', code)).toEqual([link]);
  });

  test('passes over comments, strings and markup', () => {
    const code = "// import './a.ts'\nconst s = \"import './b.ts'\";\nexport const m = <p>import './c.ts'</p>;";
    expect(readLinks('src/view/x.tsx', code)).toEqual([]);
  });
});

describe('the judge of links', () => {
  const around: Surroundings = {
    isFile: (path) => !path.includes('missing') && /\.\w+$/.test(path),
    dependencies: new Set(['react', 'rbush', 'zustand', 'immer']),
  };
  const allowed: [string, string][] = [
    ['src/plan/a.ts', "import './b.ts'"],
    ['src/report/a.ts', "import type { A } from '../plan/b.ts'"],
    ['src/cli/a.ts', "import { evaluate } from '../engine/evaluate.ts'"],
    ['src/engine/gas/a.ts', "import '../water/b.ts'"],
    ['src/files/store/a.ts', "import '../format/b.ts'"],
    ['src/reference/a.ts', "import.meta.glob('../../shared/tables/*.json')"],
    ['src/engine/registry.ts', "import.meta.glob('./rules/**/*.rule.ts')"],
    ['src/catalogue/registry.ts', "import.meta.glob('./*.point.ts')"],
    [
      'src/view/app/a.tsx',
      "import '../../../shared/look/tokens.json'; import run from '../../../shared/look/icons/run.svg?raw'",
    ],
    ['src/view/app/a.tsx', "import 'react'; import 'zustand'"],
    ['src/editor/a.ts', "import 'zustand/vanilla'; import 'immer'"],
    ['src/cli/a.ts', "import 'node:fs'"],
  ];
  test.each(allowed)('lets %s have %s', (path, code) => {
    expect(faultsIn(path, code, around)).toEqual([]);
  });

  const refused: [string, string][] = [
    ['src/plan/a.ts', "import '../report/b.ts'"],
    ['src/report/a.ts', "import type { A } from '../engine/evaluate.ts'"],
    ['src/geometry/a.ts', "export type { A } from '../report/b.ts'"],
    ['src/geometry/a.ts', "let a: import('../network/b.ts').A"],
    ['src/drawing/a.ts', "import '../reference/b.ts'"],
    ['src/view/a.tsx', "await import('../engine/evaluate.ts')"],
    ['src/cli/a.ts', "import '../engine/gas/b.ts'"],
    ['src/worker/a.ts', "new Worker(new URL('../view/b.ts', import.meta.url))"],
    ['src/engine/a.ts', "import.meta.glob('../editor/*.ts')"],
    ['src/engine/a.ts', "import.meta.glob('../**/*.ts')"],
    ['src/engine/a.ts', "import '../../shared/tables/b.json'"],
    ['src/view/a.ts', "import '../../shared/fonts/b.json'"],
    ['src/reference/a.ts', "import '../../shared/look/tokens.json'"],
    ['src/cli/a.ts', "import '../../shared/plan.schema.json'"],
    ['src/editor/a.ts', "import '../../demo-plans/b.plan.json'"],
    ['src/plan/a.ts', "import '/shared/tables/b.json'"],
    ['src/plan/a.ts', "import './missing.ts'"],
    ['src/plan/a.ts', "import './b'"],
    ['src/plan/a.ts', "import 'lodash'"],
    ['src/editor/a.ts', "import 'zustand'"],
    ['src/drawing/a.ts', "import { createElement } from 'react'"],
    ['src/files/format/a.ts', "import 'node:fs'"],
    ['src/plan/a.ts', 'await import(name)'],
    ['src/stray.ts', "import './plan/b.ts'"],
    ['src/helpers/a.ts', "import '../plan/b.ts'"],
    ['src/files/a.ts', "import '../plan/b.ts'"],
    ['src/view/a.ts', "import '../files/b.ts'"],
  ];
  test.each(refused)('refuses %s that has %s', (path, code) => {
    expect(faultsIn(path, code, around)).toHaveLength(1);
  });
});
