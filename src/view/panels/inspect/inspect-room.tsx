import { ROOM_USES } from '../../../catalogue/room-uses.ts';
import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { NumberBox } from './number-box.tsx';
import { SelectBox } from './select-box.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

/** The uses that are offered; a word the plan brought with it is kept beside them. */
function offeredUses(now: string) {
  const known = ROOM_USES.map(({ id, label }) => ({ value: id, label: label.toLowerCase() }));
  const own = now === '' || known.some((k) => k.value === now) ? [] : [{ value: now, label: now }];
  return [{ value: null, label: 'not told' }, ...own, ...known];
}

/** What a room is called and used for, and the heights and finishes that are its own. */
export function InspectRoom({ id }: { readonly id: string }) {
  const room = useEditorState((s) => s.plan.rooms[id]);
  const { disabled, run } = useChange();
  if (!room) return null;
  const set = (change: object): boolean => run('room.set', { room: id, change });
  return (
    <>
      <TextBox label="Name" value={room.name} disabled={disabled} onSet={(name) => set({ name })} />
      <SelectBox
        label="Use"
        choices={offeredUses(room.use)}
        chosen={room.use === '' ? null : room.use}
        disabled={disabled}
        onChoose={(use) => set({ use: use ?? '' })}
      />
      <div className="pair">
        <NumberBox
          label="Ceiling"
          value={room.ceilingMm}
          unit="mm"
          min={1}
          empty
          help="Empty: as on the rest of the floor."
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
      <TextBox
        label="Floor covering"
        value={room.floorCovering ?? ''}
        disabled={disabled}
        onSet={(floorCovering) => set({ floorCovering })}
      />
      <TextBox
        label="Ceiling made of"
        value={room.ceilingFinish ?? ''}
        disabled={disabled}
        onSet={(ceilingFinish) => set({ ceilingFinish })}
      />
      <TextBox
        label="Other finishes"
        value={room.finishes}
        disabled={disabled}
        onSet={(finishes) => set({ finishes })}
      />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'rooms', id }} word="room" />
      </div>
    </>
  );
}
