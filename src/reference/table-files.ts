/** Every table and source there is. The page itself is built with the few of `table-files.page.ts`: the engine has its own thread. */
export const tableFiles: Readonly<Record<string, unknown>> = import.meta.glob('../../shared/tables/*.json', {
  eager: true,
  import: 'default',
});

export const sourceFiles: Readonly<Record<string, unknown>> = import.meta.glob('../../shared/sources/*.json', {
  eager: true,
  import: 'default',
});
