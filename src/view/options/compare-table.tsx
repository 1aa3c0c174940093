import { Fragment } from 'react';
import { sayTally, type TallyRow } from '../../report/tally.ts';
import { useEditor } from '../app/use-session.ts';
import type { CaseKey } from '../strip/cases.ts';
import { CompareCell } from './compare-cell.tsx';
import { type Column, caseId } from './use-compare.ts';

/** The same in every option, as it is printed. */
export function isSame(row: TallyRow, columns: readonly Column[]): boolean {
  const said = row.cells.flatMap((cell, i) => {
    if (columns[i]?.chosen.when !== 'after') return [];
    const { figure, under } = cell ? sayTally(cell) : { figure: '', under: '' };
    return [`${figure}|${under}`];
  });
  return new Set(said).size < 2;
}

function noteOf(row: TallyRow): string {
  if (row.standing.includes('level')) return 'same in every option';
  return row.standing.includes('close') ? 'too near to tell' : '';
}

interface Props {
  readonly rows: readonly TallyRow[];
  readonly columns: readonly Column[];
  readonly cases: readonly CaseKey[];
  readonly looked: string;
}

/** Figures down, cases across. */
export function CompareTable({ rows, columns, cases, looked }: Props) {
  const editor = useEditor();
  const groups = [...new Set(rows.map((r) => r.group))];
  return (
    <table className="compare-table">
      <caption className="out-of-sight">Before the work and every option side by side</caption>
      <thead>
        <tr>
          <td className="compare-corner" />
          {cases.map((c, i) => (
            <th key={caseId(c.chosen)} scope="col" data-stale={columns[i]?.stale}>
              <button
                type="button"
                className="compare-head"
                aria-pressed={caseId(c.chosen) === looked}
                onClick={() => editor.setCase(c.chosen)}
              >
                <span>{c.name ?? c.label}</span>
                <span className="compare-under">
                  {columns[i]?.stale ? 'working it out' : caseId(c.chosen) === looked ? 'looked at' : 'look at it'}
                </span>
              </button>
            </th>
          ))}
        </tr>
      </thead>
      {groups.map((group) => (
        <tbody key={group}>
          <tr className="compare-group">
            <th scope="rowgroup" colSpan={cases.length + 1}>
              <span>{group}</span>
            </th>
          </tr>
          {rows
            .filter((r) => r.group === group)
            .map((row) => (
              <tr key={row.id}>
                <th scope="row">
                  {row.label}
                  {noteOf(row) !== '' && <span className="compare-under">{noteOf(row)}</span>}
                </th>
                {cases.map((c, i) => (
                  <Fragment key={caseId(c.chosen)}>
                    <CompareCell
                      cell={row.cells[i] ?? null}
                      standing={row.standing[i] ?? null}
                      chosen={c.chosen}
                      column={c.label}
                    />
                  </Fragment>
                ))}
              </tr>
            ))}
        </tbody>
      ))}
    </table>
  );
}
