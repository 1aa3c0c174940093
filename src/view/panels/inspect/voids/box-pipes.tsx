import { boxOnWall, outlineOnWall } from '../../../../drawing/building/box-on-wall.ts';
import type { Row } from '../../../../report/section.ts';
import { useEditor, useEditorState, useReport } from '../../../app/use-session.ts';
import { RowView } from '../../rows/row-view.tsx';
import { showIds } from '../../show-ids.ts';
import type { VoidPart } from './void-part.ts';

const SECTION = 'boxing';
const NONE: readonly Row[] = [];

const idsOf = (row: Row): readonly string[] => ('ids' in row ? row.ids : []);

/** The least size of a box as the report tells it: facts in mm, called by what they are. */
function leastOf(rows: readonly Row[]): { readonly width: number | null; readonly depth: number | null } {
  const figure = (word: RegExp): number | null => {
    const found = rows.find((r) => r.kind === 'fact' && word.test(r.label) && r.figure?.unit === 'mm');
    return found?.kind === 'fact' && found.figure ? (found.figure.value ?? found.figure.hi) : null;
  };
  return { width: figure(/width|wide/i), depth: figure(/depth|deep/i) };
}

/** The pipes in a box in their order, and the least box round them, as the report has it. */
export function BoxPipes({ record, disabled, set }: VoidPart) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const section = useReport((s) => s.report?.sections.find((one) => one.id === SECTION));
  const rows = section?.rows.filter((row) => idsOf(row).includes(record.id)) ?? NONE;
  if (rows.length === 0) return <p className="inspect-says">No pipe runs in it yet.</p>;
  const on = boxOnWall(plan, record);
  const wall = on && plan.walls[on.wall];
  const { width, depth } = leastOf(rows);
  const fits = on && wall && !on.into && width !== null && depth !== null;
  const same =
    fits && Math.round(on.toS - on.fromS) === Math.round(width) && Math.round(on.depthMm) === Math.round(depth);
  return (
    <div className="void-part">
      {rows
        .map((row, i) => ({ row, i }))
        .map(({ row, i }) => (
          <RowView
            key={i}
            row={row}
            doing={{
              title: 'Boxing',
              paler: false,
              second: true,
              onChoose: () => {},
              onShow: (ids) => showIds(editor, ids),
            }}
          />
        ))}
      {fits && !same && (
        <button
          type="button"
          className="key"
          aria-disabled={disabled}
          onClick={() =>
            !disabled && set({ outline: outlineOnWall(wall, { ...on, toS: on.fromS + width, depthMm: depth }) })
          }
        >
          Make it so: {Math.round(width)} by {Math.round(depth)}
        </button>
      )}
    </div>
  );
}
