import { boxOnWall, outlineOnWall } from '../../../../drawing/building/box-on-wall.ts';
import { voidHeights } from '../../../../geometry/void-stretches.ts';
import type { Void } from '../../../../plan/records/building.ts';
import type { Row } from '../../../../report/section.ts';
import { useEditor, useEditorState, useReport } from '../../../app/use-session.ts';
import { RowView } from '../../rows/row-view.tsx';
import { showIds } from '../../show-ids.ts';
import { leastBox, rowsOfBox } from './box-rows.ts';
import type { VoidPart } from './void-part.ts';

const SECTION = 'boxing';
const NONE: readonly Row[] = [];

/** The pipes in a box in their order, and the least box round them, as the report has it. */
export function BoxPipes({ record, disabled, set }: VoidPart) {
  const editor = useEditor();
  const plan = useEditorState((s) => s.plan);
  const section = useReport((s) => s.report?.sections.find((one) => one.id === SECTION));
  const rows = section ? rowsOfBox(section.rows, record.id) : NONE;
  if (rows.length === 0) return <p className="inspect-says">No pipe runs in it yet.</p>;
  const numbered = rows.map((row, at) => ({ row, at }));
  const least = leastBox(rows);
  const on = boxOnWall(plan, record);
  const wall = on && plan.walls[on.wall];
  const heights = voidHeights(plan, record);
  const now = least?.across === 'along' ? on && on.toS - on.fromS : heights && heights.top - heights.bottom;
  const can = least !== null && wall !== undefined && on !== undefined && !on.into && now !== undefined;
  const same = can && Math.round(now) === least.acrossMm && Math.round(on.depthMm) === least.outMm;
  const makeItSo = (): void => {
    if (!can || disabled) return;
    const along = least.across === 'along' ? { toS: on.fromS + least.acrossMm } : {};
    const top: Partial<Void> =
      least.across === 'height' && record.bottom
        ? { top: { ...record.bottom, mm: record.bottom.mm + least.acrossMm } }
        : {};
    set({ outline: outlineOnWall(wall, { ...on, ...along, depthMm: least.outMm }), ...top });
  };
  return (
    <fieldset className="plain-set void-part">
      <legend className="field-label">Pipes in it, in order</legend>
      {numbered.map(({ row, at }) => (
        <RowView
          key={at}
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
      {can && !same && (
        <button type="button" className="key" aria-disabled={disabled} onClick={makeItSo}>
          Make it so: {least.acrossMm} by {least.outMm}
        </button>
      )}
    </fieldset>
  );
}
