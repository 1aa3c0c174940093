import type { Row, Section } from '../../report/section.ts';
import { useEditor, useReport } from '../app/use-session.ts';
import { keyed } from './keyed.ts';
import { RowView } from './rows/row-view.tsx';
import { showIds } from './show-ids.ts';

type Choice = Extract<Row, { kind: 'choice' }>;

const sayRow = (row: Row): string => `${row.kind} ${'label' in row ? row.label : row.say}`;

/** Any chapter of the report, drawn from its rows alone. */
export function SectionChapter({ section }: { readonly section: Section }) {
  const editor = useEditor();
  const waiting = useReport((s) => s.waiting);
  const first = section.rows.find((r) => r.kind === 'answer');
  const choose = (row: Choice): void => {
    editor.run('leg.size', { change: row.change });
  };
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
            onChoose: choose,
            onShow: (ids) => showIds(editor, ids),
          }}
        />
      ))}
    </>
  );
}
