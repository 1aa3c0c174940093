/**
 * The tables that drawing by itself needs: sizes of tube, what is assumed, what a sheet is started from. The build puts this in
 * the place of `table-files.ts` for the page, so that a line can be drawn before the figures of the sums have arrived.
 */
export const tableFiles: Readonly<Record<string, unknown>> = import.meta.glob(
  [
    '../../shared/tables/angle-tolerance.json',
    '../../shared/tables/assumed-*.json',
    '../../shared/tables/gas-clearance-*.json',
    '../../shared/tables/gas-size-steps.json',
    '../../shared/tables/generic-things.json',
    '../../shared/tables/known-lengths.json',
    '../../shared/tables/pipe-clearance.json',
    '../../shared/tables/step-choices.json',
    '../../shared/tables/tube-*.json',
    '../../shared/tables/void-choices.json',
  ],
  { eager: true, import: 'default' },
);

/** Sources are told by the report: the page asks for none. */
export const sourceFiles: Readonly<Record<string, unknown>> = {};
