import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { NumberBox } from './number-box.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

/** What a room is called and used for, and the heights that are its own. */
export function InspectRoom({ id }: { readonly id: string }) {
  const room = useEditorState((s) => s.plan.rooms[id]);
  const { disabled, run } = useChange();
  if (!room) return null;
  const set = (change: object): boolean => run('room.set', { room: id, change });
  return (
    <>
      <TextBox label="Name" value={room.name} disabled={disabled} onSet={(name) => set({ name })} />
      <TextBox label="Use" value={room.use} disabled={disabled} onSet={(use) => set({ use })} />
      <div className="pair">
        <NumberBox
          label="Ceiling"
          value={room.ceilingMm}
          unit="mm"
          min={1}
          empty
          help="Empty: as the floor."
          disabled={disabled}
          onSet={(v) => set({ ceilingMm: typeof v === 'number' ? v : null })}
        />
        <NumberBox
          label="Floor, off the storey"
          value={room.floorMm}
          unit="mm"
          empty
          disabled={disabled}
          onSet={(v) => set({ floorMm: typeof v === 'number' ? v : null })}
        />
      </div>
      <ChoiceKeys
        label="Heated?"
        choices={YES_NO}
        chosen={room.heated}
        disabled={disabled}
        onChoose={(heated) => set({ heated })}
      />
      <ChoiceKeys
        label="Part of a protected way out?"
        choices={YES_NO}
        chosen={room.escapeRoute}
        disabled={disabled}
        onChoose={(escapeRoute) => set({ escapeRoute })}
      />
      <TextBox label="Finishes" value={room.finishes} disabled={disabled} onSet={(finishes) => set({ finishes })} />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'rooms', id }} word="room" />
      </div>
    </>
  );
}
