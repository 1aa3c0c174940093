/** Stands in for the files of tables and sources: the one who runs the tests hands them in. */
const given = globalThis as unknown as {
  readonly kicksetTables: Readonly<Record<string, Readonly<Record<string, unknown>>>>;
};

export const tableFiles: Readonly<Record<string, unknown>> = given.kicksetTables.tables ?? {};
export const sourceFiles: Readonly<Record<string, unknown>> = given.kicksetTables.sources ?? {};
