import type { Row, Section } from '../../report/section.ts';
import { useEditor, useReport } from '../app/use-session.ts';
import { KickTurn } from '../look/kick.tsx';
import { choose } from './choose.ts';
import { keyed } from './keyed.ts';
import { foldRows, type Shown } from './rows/fold-rows.ts';
import { RowView } from './rows/row-view.tsx';
import { showIds } from './show-ids.ts';

const sayRow = (row: Row): string => `${row.kind} ${'label' in row ? row.label : row.say}`;
const sayShown = (s: Shown): string => (s.is === 'row' ? sayRow(s.row) : `fold ${s.title} ${s.say}`);

/** Any chapter of the report, drawn from its rows alone. */
export function SectionChapter({ section }: { readonly section: Section }) {
  const editor = useEditor();
  const waiting = useReport((s) => s.waiting);
  const first = section.rows.find((r) => r.kind === 'answer');
  const draw = (row: Row, key: string) => (
    <RowView
      key={key}
      row={row}
      doing={{
        title: section.title,
        paler: waiting,
        second: row.kind === 'answer' && row !== first,
        onChoose: (picked) => choose(editor, picked),
        onShow: (ids) => showIds(editor, ids),
      }}
    />
  );
  return (
    <>
      {keyed(foldRows(section.rows), sayShown).map(({ key, item }) =>
        item.is === 'row' ? (
          draw(item.row, key)
        ) : (
          <details key={key} className="working rows-fold">
            <summary>
              <span className="working-title">
                {item.title}
                {item.say !== '' && <span className="fold-of">{item.say}</span>}
              </span>
              <KickTurn />
            </summary>
            {keyed(item.rows, sayRow).map((inside) => draw(inside.item, inside.key))}
          </details>
        ),
      )}
    </>
  );
}
