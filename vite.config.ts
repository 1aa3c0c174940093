import { createHash } from 'node:crypto';
import { existsSync, readdirSync, readFileSync, writeFileSync } from 'node:fs';
import { join, relative } from 'node:path';
import { fileURLToPath } from 'node:url';
import react from '@vitejs/plugin-react';
import type { HtmlTagDescriptor, Plugin, UserConfig } from 'vite';
import { defineConfig } from 'vitest/config';
import { textSizeFollowed } from './src/view/look/px-to-rem.ts';

const at = (path: string) => fileURLToPath(new URL(path, import.meta.url));

/** Browser tests need hooks into the page that a released build must not carry. */
const forTests = process.env.KICKSET_TEST === '1';
const appFolder = at(forTests ? 'dist/e2e' : 'dist/app');
const define = { __TEST_HOOKS__: JSON.stringify(forTests) };

/** What the page may load: itself, and pictures, files and frames that it made. Nothing leaves the machine. */
const policy = [
  "default-src 'none'",
  "script-src 'self'",
  "style-src 'self'",
  "img-src 'self' data: blob:",
  "font-src 'self'",
  "connect-src 'self' blob:",
  "worker-src 'self'",
  "frame-src 'self' blob:",
  "manifest-src 'self'",
  "base-uri 'none'",
  "form-action 'none'",
];

/** The dev server puts scripts and styles in the page and keeps a socket open. */
const devPolicy = [
  ...policy.filter((line) => !/^(script|style|connect|worker)-src/.test(line)),
  "script-src 'self' 'unsafe-inline'",
  "style-src 'self' 'unsafe-inline'",
  "connect-src 'self' blob: ws: wss:",
  "worker-src 'self' blob:",
];

const headers = (lines: string[]) => ({
  'Content-Security-Policy': [...lines, "frame-ancestors 'none'"].join('; '),
  'Cross-Origin-Opener-Policy': 'same-origin',
  'Cross-Origin-Resource-Policy': 'same-origin',
  'Permissions-Policy': 'geolocation=(), microphone=(), payment=(), usb=()',
  'Referrer-Policy': 'no-referrer',
  'X-Content-Type-Options': 'nosniff',
});

/** Puts the policy into the built page too, since a plain file host sends no headers of ours. */
function policyInPage(): Plugin {
  const tag: HtmlTagDescriptor = {
    tag: 'meta',
    attrs: { 'http-equiv': 'Content-Security-Policy', content: policy.join('; ') },
    injectTo: 'head-prepend',
  };
  return { name: 'policy-in-page', apply: 'build', transformIndexHtml: () => [tag] };
}

/**
 * The page is built with the tables it needs for drawing; the engine's own thread is built apart, without this, and has all.
 * While developing both have all.
 */
function fewTablesForThePage(): Plugin {
  return {
    name: 'few-tables-for-the-page',
    apply: 'build',
    enforce: 'pre',
    resolveId(asked, from) {
      const isPage = asked === './table-files.ts' && from?.endsWith('/src/reference/tables.ts');
      return isPage ? at('src/reference/table-files.page.ts') : null;
    },
  };
}

/** Parts that the PDF library loads for pages of HTML and drawn images: never asked for here, so never shipped. */
function unusedParts(): Plugin {
  const unused = new Set(['html2canvas', 'dompurify', 'canvg']);
  const nothing = '\0nothing';
  return {
    name: 'unused-parts',
    apply: 'build',
    enforce: 'pre',
    resolveId: (asked) => (unused.has(asked) ? nothing : null),
    load: (id) => (id === nothing ? 'export default null;' : null),
  };
}

interface Found {
  readonly type: string;
  readonly start: number;
  readonly end: number;
  readonly key?: { readonly name?: string };
  readonly properties?: readonly Found[];
  readonly arguments?: readonly Found[];
}

/** Every command brings arguments for the undo test (`example`). Tests want them, the page never does. */
function withoutExamples(): Plugin {
  return {
    name: 'without-examples',
    apply: 'build',
    transform(code, file) {
      if (!file.endsWith('.command.ts')) return null;
      const { body } = this.parse(code) as unknown as { body: readonly { readonly declaration?: Found }[] };
      const told = body.flatMap((line) => line.declaration?.arguments?.[0]?.properties ?? []);
      const example = told.find((property) => property.key?.name === 'example');
      if (!example) throw new Error(`${file}: no example`);
      return { code: `${code.slice(0, example.start)}example: () => null${code.slice(example.end)}`, map: null };
    },
  };
}

/** The font's licence travels with the font. */
function fontLicence(): Plugin {
  return {
    name: 'font-licence',
    apply: 'build',
    generateBundle() {
      const source = readFileSync(at('shared/fonts/OFL.txt'), 'utf8');
      this.emitFile({ type: 'asset', fileName: 'assets/hanken-grotesk-OFL.txt', source });
    },
  };
}

/**
 * Tells the service worker what to keep: `__OFFLINE__`, put before its code. Its version follows every byte of the
 * build, so a new build is a new worker.
 */
function offlineList(): Plugin {
  return {
    name: 'offline-list',
    apply: 'build',
    writeBundle: {
      order: 'post',
      handler({ dir }) {
        if (dir === undefined || !existsSync(join(dir, 'sw.js'))) return;
        const files = readdirSync(dir, { recursive: true, withFileTypes: true })
          .filter((entry) => entry.isFile() && entry.name !== 'sw.js')
          .map((entry) => relative(dir, join(entry.parentPath, entry.name)).replaceAll('\\', '/'))
          .sort();
        const hash = createHash('sha256');
        for (const file of files) hash.update(file).update(readFileSync(join(dir, file)));
        const list = JSON.stringify({ version: hash.digest('hex').slice(0, 12), files });
        const code = readFileSync(join(dir, 'sw.js'), 'utf8');
        writeFileSync(join(dir, 'sw.js'), `self.__OFFLINE__=${list};\n${code}`);
      },
    },
  };
}

/** The page. A service worker at src/view/app/sw.ts, if there is one, is built to /sw.js. */
function app(): UserConfig {
  const serviceWorker = at('src/view/app/sw.ts');
  return {
    root: at('src/view'),
    base: './',
    define,
    plugins: [
      react(),
      fewTablesForThePage(),
      withoutExamples(),
      unusedParts(),
      policyInPage(),
      fontLicence(),
      offlineList(),
    ],
    css: { postcss: { plugins: [textSizeFollowed] } },
    worker: { format: 'es' },
    build: {
      outDir: appFolder,
      emptyOutDir: true,
      target: 'es2022',
      // A font put into a data address would need a wider policy; files of their own do not.
      assetsInlineLimit: 0,
      rolldownOptions: {
        input: { index: at('src/view/index.html'), ...(existsSync(serviceWorker) ? { sw: serviceWorker } : {}) },
        output: {
          entryFileNames: (chunk) => (chunk.name === 'sw' ? 'sw.js' : 'assets/[name]-[hash].js'),
          // Packages change seldom: kept apart, an update of the app does not fetch them again.
          codeSplitting: {
            groups: [
              { name: 'react', test: /node_modules[\\/](react|react-dom|scheduler)[\\/]/ },
              { name: 'canvas', test: /node_modules[\\/](konva|react-konva|react-reconciler|its-fine)[\\/]/ },
            ],
          },
        },
      },
    },
    server: { headers: headers(devPolicy), fs: { allow: [at('.')] } },
    preview: { headers: headers(policy) },
  };
}

/** Tests that work with the editor, and the rest. */
const ofTheHand = ['tests/editor/**/*.test.ts', 'tests/view/**/*.test.ts'];
const wholeEditor = at('tests/all-of-the-editor.ts');
const others = { include: ['tests/**/*.test.ts'], exclude: ofTheHand };

/** One file that runs with node alone. */
function nodeBundle(entry: string, folder: string, file: string): UserConfig {
  return {
    root: at('.'),
    define,
    publicDir: false,
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: at(entry),
      outDir: at(folder),
      emptyOutDir: true,
      target: 'node20',
      minify: false,
      rolldownOptions: { output: { entryFileNames: file, codeSplitting: false } },
    },
  };
}

export default defineConfig(({ mode }) => {
  if (mode === 'cli') return nodeBundle('src/cli/main.ts', 'dist/cli', 'main.js');
  if (mode === 'bench') return nodeBundle('src/cli/bench.ts', 'dist/bench', 'bench.js');
  if (mode !== 'test') return app();
  return {
    root: at('.'),
    define,
    test: {
      projects: [
        { extends: true, test: { name: 'unit', environment: 'node', testTimeout: 30_000, ...others } },
        // What the page fetches after the first line is there from the start.
        {
          extends: true,
          test: {
            name: 'hand',
            environment: 'node',
            testTimeout: 30_000,
            include: ofTheHand,
            setupFiles: [wholeEditor],
          },
        },
      ],
      coverage: { include: ['src/**/*.{ts,tsx}'], reportsDirectory: 'dist/coverage' },
    },
  };
});
