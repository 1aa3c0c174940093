import type { Void } from '../../../plan/records/building.ts';
import { useEditorState } from '../../app/use-session.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { DeleteKey } from './delete-key.tsx';
import { FateKeys } from './fate-keys.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';
import { VoidAir } from './voids/void-air.tsx';
import { VoidBox } from './voids/void-box.tsx';
import { VoidHeights } from './voids/void-heights.tsx';
import { VoidHoles } from './voids/void-holes.tsx';
import { VoidJoists } from './voids/void-joists.tsx';
import { VoidLayers } from './voids/void-layers.tsx';
import { VoidOutline } from './voids/void-outline.tsx';

/** A void holds air between its sides; a slab holds none. */
const isSolid = (kind: Void['kind']): boolean => kind === 'slab' || kind === 'chase';
const isBox = (kind: Void['kind']): boolean => kind === 'boxing' || kind === 'chase';

/** A space in a floor, ceiling, boxing, slab or wall: what is asked hangs on what it is. */
export function InspectVoid({ id }: { readonly id: string }) {
  const record = useEditorState((s) => s.plan.voids[id]);
  const { disabled, run } = useChange();
  if (!record) return null;
  const set = (change: Partial<Void>): boolean => run('void.set', { void: id, change });
  const { kind } = record;
  const part = { record, disabled, set };
  return (
    <>
      <TextBox label="Name" value={record.name} disabled={disabled} onSet={(name) => set({ name })} />
      {isBox(kind) && <VoidBox {...part} />}
      {(kind === 'ceiling' || kind === 'floor') && <VoidJoists {...part} />}
      {kind === 'slab' && <VoidLayers {...part} />}
      <VoidHeights {...part} />
      {!isBox(kind) && <VoidOutline {...part} />}
      {(kind === 'ceiling' || kind === 'floor') && <VoidHoles {...part} />}
      {!isSolid(kind) && <VoidAir {...part} />}
      <ChoiceKeys
        label="May it be cut?"
        choices={YES_NO}
        chosen={record.mayBeCut}
        disabled={disabled}
        onChoose={(mayBeCut) => set({ mayBeCut })}
      />
      <SurenessKeys sureness={record.sureness} disabled={disabled} onChoose={(sureness) => set({ sureness })} />
      {kind === 'boxing' && <FateKeys id={id} surveyed={record.option === null} />}
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'voids', id }} word={kind === 'ceiling' || kind === 'floor' ? `${kind} void` : kind} />
      </div>
    </>
  );
}
