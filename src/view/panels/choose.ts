import type { Editor } from '../../editor/editor-api.ts';
import type { Row } from '../../report/section.ts';

/** Makes a way of a report so: the tube of every leg it names, as one step where the editor knows how. */
export function choose(editor: Editor, row: Extract<Row, { kind: 'choice' }>): void {
  if (row.change.length === 0) return;
  editor.run('legs.size', { legs: row.change.map(({ leg, kind, size }) => ({ leg, tube: { kind, size } })) });
}
