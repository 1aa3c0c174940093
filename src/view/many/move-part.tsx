import { useState } from 'react';
import type { Selected } from '../../editor/editor-api.ts';
import { wayInHouse, workPlane } from '../../editor/input/work-plane.ts';
import { useEditor, useEditorState } from '../app/use-session.ts';
import { isMovable } from '../bench/nudge.ts';
import { NudgePad } from '../bench/nudge-pad.tsx';
import { KickTurn } from '../look/kick.tsx';
import { type Signed, SignedBox, signedMm, untold } from './signed-box.tsx';

/** Moved by keys, or by three typed lengths in one step: the same for one thing and for several. */
export function MovePart({ things }: { readonly things: readonly Selected[] }) {
  if (!things.some(isMovable)) return null;
  return (
    <details className="field-group">
      <summary>
        <span className="group-name">Move</span>
        <span className="group-told">by keys or typed</span>
        <KickTurn />
      </summary>
      <div className="group-fields">
        <NudgePad things={things} />
        <MoveBy things={things} />
      </div>
    </details>
  );
}

function MoveBy({ things }: { readonly things: readonly Selected[] }) {
  const editor = useEditor();
  const disabled = useEditorState((s) => s.readOnly !== null);
  const onFace = useEditorState((s) => (s.panes[s.panes.active] ?? s.panes.plan).view.kind === 'face');
  const [across, setAcross] = useState<Signed>(untold);
  const [up, setUp] = useState<Signed>(untold);
  const [higher, setHigher] = useState<Signed>(untold);
  const [x, y, z] = [signedMm(across), signedMm(up), onFace ? 0 : signedMm(higher)];
  const way = x === undefined || y === undefined || z === undefined ? undefined : { x, y, z };
  const nothing = way === undefined || (way.x === 0 && way.y === 0 && way.z === 0);
  const move = (): void => {
    const { plan, panes } = editor.store.getState();
    const plane = workPlane(plan, (panes[panes.active] ?? panes.plan).view);
    if (disabled || nothing || !way || !plane) return;
    const flat = wayInHouse(plane, [way.x, way.y]);
    const by = { ...flat, z: flat.z + way.z };
    if (!editor.run('things.move', { things: things.filter(isMovable), by }).ok) return;
    setAcross({ ...across, text: '' });
    setUp({ ...up, text: '' });
    setHigher({ ...higher, text: '' });
  };
  const box = { disabled, onEnter: move };
  return (
    <div className="move-by">
      <SignedBox label="Across" ways={['right', 'left']} value={across} onChange={setAcross} {...box} />
      <SignedBox
        label={onFace ? 'Height' : 'On the sheet'}
        ways={onFace ? ['higher', 'lower'] : ['up sheet', 'down sheet']}
        value={up}
        onChange={setUp}
        {...box}
      />
      {!onFace && <SignedBox label="Height" ways={['higher', 'lower']} value={higher} onChange={setHigher} {...box} />}
      <button type="button" className="key slight" aria-disabled={disabled || nothing} onClick={move}>
        Move
      </button>
    </div>
  );
}
