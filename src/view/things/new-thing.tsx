import { useState } from 'react';
import { pointKinds } from '../../catalogue/point-kinds.ts';
import { SHEET_READ } from '../../catalogue/thing-parts.ts';
import { deviceIds } from '../app/ids.ts';
import { SelectBox } from '../panels/inspect/select-box.tsx';
import { THING_KINDS } from './say-thing-kept.ts';
import { editThing, shelve } from './shelf.ts';

/** A thing from a blank sheet. */
export function NewThing() {
  const [kind, setKind] = useState('boiler');
  const kinds = THING_KINDS.flatMap((id) => pointKinds.get(id) ?? []);
  const add = (): void => {
    const known = pointKinds.get(kind);
    if (!known) return;
    const id = deviceIds.next('thing');
    const fields = { ...known.defaults, [SHEET_READ]: true };
    const size = { ...known.size };
    const connections = known.connections(size, known.defaults);
    void shelve(
      { id, kind, name: `My ${known.label.toLowerCase()}`, fields, size, connections },
      `new ${known.label.toLowerCase()}`,
    );
    editThing(id);
  };
  return (
    <div className="key-row new-thing">
      <div className="grow">
        <SelectBox
          label="Type one from its sheet"
          choices={kinds.map((k) => ({ value: k.id, label: k.label }))}
          chosen={kind}
          onChoose={(v) => v !== null && setKind(v)}
        />
      </div>
      <button type="button" className="key slight" onClick={add}>
        New
      </button>
    </div>
  );
}
