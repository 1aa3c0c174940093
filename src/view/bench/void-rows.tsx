import type { InHand } from '../../editor/editor-api.ts';
import { useEditorState } from '../app/use-session.ts';
import { Pick, Row, useInHand } from './tray-row.tsx';

const KINDS: readonly InHand['voidKind'][] = ['ceiling', 'floor', 'slab', 'boxing', 'chase', 'duct'];
const WHOLE: ReadonlySet<InHand['voidKind']> = new Set(['ceiling', 'floor', 'slab']);

/** The kind of the next void, and what a tap takes of it. */
export function VoidRows() {
  const [inHand, set] = useInHand();
  const { voidKind, voidTask } = inHand;
  const folded = useEditorState((s) => s.panes.face !== null);
  return (
    <>
      <Row label="Void">
        {KINDS.map((kind) => (
          <Pick key={kind} on={kind === voidKind} onPick={() => set({ voidKind: kind, voidTask: 'room' })}>
            {kind}
          </Pick>
        ))}
      </Row>
      {WHOLE.has(voidKind) && (
        <Row label="A tap takes">
          <Pick on={voidTask !== 'outline'} onPick={() => set({ voidTask: 'room' })}>
            the whole room
          </Pick>
          <Pick on={voidTask === 'outline'} onPick={() => set({ voidTask: 'outline' })}>
            a corner
          </Pick>
        </Row>
      )}
      {voidKind === 'boxing' && (
        <p className="tray-says">
          {folded ? 'Drag it on the face' : 'Fold up the face of its wall and drag it there'}, or outline it in the
          plan.
        </p>
      )}
      {voidKind === 'chase' && (
        <p className="tray-says">
          {folded ? 'Drag it on the face.' : 'Fold up the face of its wall and drag it there.'}
        </p>
      )}
    </>
  );
}
