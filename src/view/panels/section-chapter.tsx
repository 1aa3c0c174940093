import type { Row, Section } from '../../report/section.ts';
import { useEditor, useReport } from '../app/use-session.ts';
import { choose } from './choose.ts';
import { keyed } from './keyed.ts';
import { RowView } from './rows/row-view.tsx';
import { showIds } from './show-ids.ts';

const sayRow = (row: Row): string => `${row.kind} ${'label' in row ? row.label : row.say}`;

/** Any chapter of the report, drawn from its rows alone. */
export function SectionChapter({ section }: { readonly section: Section }) {
  const editor = useEditor();
  const waiting = useReport((s) => s.waiting);
  const first = section.rows.find((r) => r.kind === 'answer');
  return (
    <>
      {keyed(section.rows, sayRow).map(({ key, item: row }) => (
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
      ))}
    </>
  );
}
