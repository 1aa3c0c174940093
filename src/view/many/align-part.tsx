import type { Vec } from '../../drawing/display-list.ts';
import type { Editor, Selected } from '../../editor/editor-api.ts';
import { wayInHouse, workPlane } from '../../editor/input/work-plane.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { isMovable } from '../bench/nudge.ts';
import { KickTurn } from '../look/kick.tsx';

type Edge = 'least' | 'middle' | 'most';
type Way = 'across' | 'up' | 'height';

const ROWS: readonly {
  readonly way: Way;
  readonly label: string;
  readonly edges: readonly (readonly [Edge, string])[];
}[] = [
  {
    way: 'across',
    label: 'In a line up the sheet',
    edges: [
      ['least', 'left'],
      ['middle', 'middle'],
      ['most', 'right'],
    ],
  },
  {
    way: 'up',
    label: 'In a line across the sheet',
    edges: [
      ['most', 'top'],
      ['middle', 'middle'],
      ['least', 'bottom'],
    ],
  },
  {
    way: 'height',
    label: 'At the same height',
    edges: [
      ['least', 'lowest'],
      ['middle', 'middle'],
      ['most', 'highest'],
    ],
  },
];

const AS_SEEN: Readonly<Record<'across' | 'up', Vec>> = { across: [1, 0], up: [0, 1] };

function align(editor: Editor, things: readonly Selected[], way: Way, edge: Edge): void {
  const { plan, panes } = editor.store.getState();
  const plane = workPlane(plan, (panes[panes.active] ?? panes.plan).view);
  if (!plane) return;
  const to = way === 'height' ? { x: 0, y: 0, z: 1 } : wayInHouse(plane, AS_SEEN[way]);
  editor.run('things.align', { things, way: to, edge });
}

/** Brought to one line as it is seen, or to one height. On a face up the sheet is height. */
export function AlignPart({ things }: { readonly things: readonly Selected[] }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const onFace = useEditorState((s) => (s.panes[s.panes.active] ?? s.panes.plan).view.kind === 'face');
  const some = things.filter(isMovable);
  if (some.length < 2) return null;
  return (
    <details className="field-group">
      <summary>
        <span className="group-name">Align</span>
        <span className="group-told">edges, middles, heights</span>
        <KickTurn />
      </summary>
      <div className="group-fields">
        {ROWS.filter((r) => !onFace || r.way !== 'up').map(({ way, label, edges }) => (
          <fieldset key={way} className="plain-set">
            <legend className="field-label">{label}</legend>
            <div className="thirds">
              {edges.map(([edge, word]) => (
                <button
                  key={edge}
                  type="button"
                  className="key slight"
                  aria-disabled={disabled}
                  onClick={() => !disabled && align(editor, some, way, edge)}
                >
                  {word}
                </button>
              ))}
            </div>
          </fieldset>
        ))}
        <p className="inspect-says">Pipes follow what they are joined to.</p>
      </div>
    </details>
  );
}
