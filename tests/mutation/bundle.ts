import { fileURLToPath } from 'node:url';
import { build, type Rollup } from 'vite';

const at = (path: string): string => fileURLToPath(new URL(path, import.meta.url));

/** All tests and all they test in one script, with the tables left to be handed in. */
export async function bundleTests(): Promise<string> {
  const made = (await build({
    configFile: false,
    root: at('../../'),
    logLevel: 'error',
    publicDir: false,
    // Files beside a test are looked for from its folder; all of these folders are as deep.
    define: { 'import.meta.url': JSON.stringify(new URL('../engine/demo-file.ts', import.meta.url).href) },
    resolve: { alias: [{ find: /^vitest$/, replacement: at('./judged-tests.ts') }] },
    plugins: [
      {
        name: 'tables-handed-in',
        enforce: 'pre',
        resolveId: (asked, from) =>
          asked === './table-files.ts' && from?.endsWith('/reference/tables.ts') ? at('./given-tables.ts') : null,
      },
    ],
    ssr: { noExternal: true, target: 'node' },
    build: {
      ssr: at('./all-tests.ts'),
      write: false,
      minify: false,
      target: 'node20',
      rolldownOptions: { output: { format: 'cjs', codeSplitting: false } },
    },
  })) as Rollup.RollupOutput | Rollup.RollupOutput[];
  const [output] = Array.isArray(made) ? made : [made];
  const chunk = output?.output.find((o) => o.type === 'chunk');
  if (chunk?.type !== 'chunk') throw new Error('the tests were not bundled');
  return chunk.code;
}
