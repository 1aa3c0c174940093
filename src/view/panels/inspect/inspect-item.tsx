import { itemKinds } from '../../../catalogue/items.ts';
import { useEditorState } from '../../app/use-session.ts';
import { DeleteKey } from './delete-key.tsx';
import { FieldForm } from './field-form.tsx';
import { SurenessKeys } from './sureness-keys.tsx';
import { TextBox } from './text-box.tsx';
import { useChange } from './use-change.ts';

/** A valve, filter, drain cock… in its pipe. */
export function InspectItem({ id }: { readonly id: string }) {
  const item = useEditorState((s) => s.plan.items[id]);
  const { disabled, run } = useChange();
  if (!item) return null;
  const kind = itemKinds.get(item.kind);
  return (
    <>
      <p className="inspect-says">{kind?.label ?? item.kind}</p>
      <TextBox
        label="Name"
        value={item.name}
        disabled={disabled}
        onSet={(name) => run('item.set', { item: id, change: { name } })}
      />
      <FieldForm
        specs={kind?.fields ?? []}
        values={item.fields}
        disabled={disabled}
        onSet={(key, value) => run('item.set', { item: id, change: {}, fields: { [key]: value } })}
      />
      <SurenessKeys
        sureness={item.sureness}
        disabled={disabled}
        onChoose={(sureness) => run('item.set', { item: id, change: { sureness } })}
      />
      <div className="key-row end-keys">
        <DeleteKey of={{ map: 'items', id }} word="it" />
      </div>
    </>
  );
}
