import type { Row, Section } from '../../report/section.ts';
import { useEditor, useReport } from '../app/use-session.ts';
import { RowView } from './rows/row-view.tsx';
import { showIds } from './show-ids.ts';

type Choice = Extract<Row, { kind: 'choice' }>;

const keyOf = (row: Row, i: number): string => `${row.kind}-${'label' in row ? row.label : ''}-${i}`;

/** Any chapter of the report, drawn from its rows alone. */
export function SectionChapter({ section }: { readonly section: Section }) {
  const editor = useEditor();
  const waiting = useReport((s) => s.waiting);
  const choose = (row: Choice): void => {
    editor.run('leg.size', { change: row.change });
  };
  return (
    <>
      {section.rows.map((row, i) => (
        <RowView
          key={keyOf(row, i)}
          row={row}
          doing={{ title: section.title, paler: waiting, onChoose: choose, onShow: (ids) => showIds(editor, ids) }}
        />
      ))}
    </>
  );
}
