import { editionsOf } from '../../reference/tables.ts';
import type { TubeSize } from '../../reference/tubes.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { WorkingStep } from '../../report/working.ts';
import { sayTubeKind } from '../say-names.ts';
import type { GasKind } from './heat-input.ts';
import type { PhysicalDrop } from './physical-drop.ts';
import { figures, step } from './said.ts';
import type { TableDrop } from './table-drop.ts';

/** What a reader should know of where the figures come from. */
export function sectionNotes(
  table: TableDrop | undefined,
  ask: { readonly gas: GasKind; readonly flow: Quantity },
  found: TubeSize,
): string[] {
  const of = found.label;
  if (ask.gas !== 'natural') return ['The discharge table is for natural gas: propane goes by the physical sum alone.'];
  if (!table) {
    const none = editionsOf(`gas-discharge-${found.kind}`).length === 0;
    return [
      none
        ? `No discharge table has been read for ${sayTubeKind(found)}.`
        : `The discharge table has no row for ${of}: the physical sum stands alone.`,
    ];
  }
  const notes: string[] = [];
  if (table.upperIsBound)
    notes.push(
      `The flow in ${of} lies past the last column (${table.endM} m) of the table, so the table can only say at most.`,
    );
  if (table.most === null && table.endM !== null)
    notes.push(
      `The flow is more than ${of} carries over the first column (${table.endM} m) of the table: it has no figure.`,
    );
  if (table.stepped) {
    notes.push(
      `Stepping to the ${table.stepped.atM} m column instead of reading between columns gives ${table.stepped.mbar.toFixed(2)} mbar.`,
    );
  }
  return notes;
}

/** One line for each method: what went in, what came out. */
export function methodSteps(
  ask: { readonly gas: GasKind; readonly flow: Quantity },
  found: TubeSize,
  length: Quantity,
  table: TableDrop | undefined,
  asTable: Quantity | null,
  physical: PhysicalDrop | undefined,
): WorkingStep[] {
  const done: WorkingStep[] = [];
  if (table) {
    const carried =
      table.carriesM === null
        ? ''
        : `${found.label} carries ${figures(ask.flow)} m3/h over ${table.carriesM.toFixed(1)} m: `;
    const shown =
      table.upperIsBound && table.endM !== null
        ? `at most ${figures(length)} / ${table.endM}`
        : `${figures(length)} over that length`;
    done.push(
      step('By the table', asTable ? carried + shown : 'no figure: the flow is over its first column', asTable, [
        table.cite,
      ]),
    );
  }
  if (physical) {
    const re = physical.re === null ? '' : `, Re ${Math.round(physical.re / 10) * 10}`;
    done.push(
      step(
        'By the physical sum',
        `${figures(length)} m at ${figures(ask.flow)} m3/h in a bore of ${found.boreMm}${re}`,
        physical.drop,
        physical.cites,
      ),
    );
  }
  return done;
}
