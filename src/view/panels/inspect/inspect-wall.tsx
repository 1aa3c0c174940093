import { sayFace } from '../../a11y/say-face.ts';
import { useEditor, useEditorState } from '../../app/use-session.ts';
import { Icon } from '../../look/icon.tsx';
import { foldUp } from '../../stage/fold-up.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { FateKeys } from './fate-keys.tsx';
import { NumberBox } from './number-box.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

/** A wall: its measures, and either of its faces folded up over the plan. */
export function InspectWall({ id }: { readonly id: string }) {
  const editor = useEditor();
  const wall = useEditorState((s) => s.plan.walls[id]);
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  if (!wall) return null;
  const set = (change: object): boolean => run('wall.set', { wall: id, change });
  const length = Math.hypot(wall.a.x - wall.b.x, wall.a.y - wall.b.y);
  return (
    <>
      <div className="key-row">
        {(['left', 'right'] as const).map((side) => (
          <button key={side} type="button" className="key slight" onClick={() => foldUp(editor, { wall: id, side })}>
            <Icon name="wall-face" size={22} />
            <span className="key-words">
              Fold up {side} face
              <span className="under">{sayFace(plan, wall, side)}</span>
            </span>
          </button>
        ))}
      </div>
      <NumberBox
        label="Length"
        value={length}
        unit="mm"
        min={1}
        max={100_000}
        disabled={disabled}
        onSet={(v) => typeof v === 'number' && run('wall.length', { wall: id, lengthMm: v })}
      />
      <div className="pair">
        <NumberBox
          label="Thickness"
          value={wall.thicknessMm}
          unit="mm"
          min={1}
          max={2000}
          disabled={disabled}
          onSet={(v) => typeof v === 'number' && set({ thicknessMm: v })}
        />
        <NumberBox
          label="Height"
          value={wall.heightMm}
          unit="mm"
          min={1}
          max={20_000}
          empty
          help="Empty: up to the ceiling."
          disabled={disabled}
          onSet={(v) => set({ heightMm: typeof v === 'number' ? v : null })}
        />
      </div>
      <TextBox
        label="Made of"
        value={wall.construction}
        disabled={disabled}
        onSet={(construction) => set({ construction })}
      />
      <ChoiceKeys
        label="Shared with another dwelling?"
        choices={YES_NO}
        chosen={wall.party ?? null}
        disabled={disabled}
        onChoose={(party) => set({ party })}
      />
      <ChoiceKeys
        label="Must it hold back fire?"
        choices={YES_NO}
        chosen={wall.fire ?? null}
        disabled={disabled}
        onChoose={(fire) => set({ fire })}
      />
      <ChoiceKeys
        label="Hollow blocks?"
        choices={YES_NO}
        chosen={wall.hollow ?? null}
        disabled={disabled}
        onChoose={(hollow) => set({ hollow })}
      />
      <NumberBox
        label="Leaf, without finishes"
        value={wall.leafMm ?? null}
        unit="mm"
        min={1}
        max={2000}
        empty
        help="Of masonry that a chase would be cut in."
        disabled={disabled}
        onSet={(v) => set({ leafMm: typeof v === 'number' ? v : null })}
      />
      <SurenessKeys sureness={wall.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      <FateKeys id={id} surveyed={wall.option === null} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'walls', id }} word="wall" />
      </div>
    </>
  );
}
