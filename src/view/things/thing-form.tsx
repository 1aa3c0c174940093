import { pointKinds } from '../../catalogue/point-kinds.ts';
import { partsOf, SHEET_READ } from '../../catalogue/thing-parts.ts';
import type { Field } from '../../plan/records/pipework.ts';
import type { Thing } from '../../plan/records/statements.ts';
import { ChoiceKeys } from '../panels/inspect/choice-keys.tsx';
import { FieldForm } from '../panels/inspect/field-form.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { TextBox } from '../panels/inspect/text-box.tsx';
import { shelve } from './shelf.ts';
import { TailsEditor } from './tails-editor.tsx';

const SIZES = [
  { key: 'widthMm', label: 'Width' },
  { key: 'depthMm', label: 'Depth' },
  { key: 'heightMm', label: 'Height' },
] as const;

const READ = [
  { value: true, label: 'its own sheet' },
  { value: false, label: 'assumed' },
] as const;

/** A thing's sheet, typed once. Every figure is kept as it is typed; jobs that use it are asked, never changed. */
export function ThingForm({ thing }: { readonly thing: Thing }) {
  const kind = pointKinds.get(thing.kind);
  if (!kind) return <p className="thing-note">This version does not know a {thing.kind}. It is kept as it is.</p>;
  const parts = partsOf(thing);
  const keep = (change: Partial<Thing>, label: string): boolean => {
    void shelve({ ...thing, ...change }, label);
    return true;
  };
  const setField = (key: string, value: Field): boolean => {
    const label = kind.fields.find((f) => f.key === key)?.label.toLowerCase() ?? key;
    return keep({ fields: { ...thing.fields, [key]: value } }, label);
  };
  const usual = () => kind.connections(parts.size, { ...kind.defaults, ...parts.fields });
  return (
    <div className="inspect thing-form">
      <TextBox
        label="Name"
        value={thing.name}
        onSet={(name) => name.trim() !== '' && keep({ name: name.trim() }, 'name')}
        help="What you call it; it stands on the drawing."
      />
      <ChoiceKeys<boolean>
        label="Figures from"
        choices={READ}
        chosen={thing.fields[SHEET_READ] !== false}
        help="Assumed: a point made from it is drawn dashed until its sheet was read."
        onChoose={(read) => keep({ fields: { ...thing.fields, [SHEET_READ]: read } }, 'where its figures are from')}
      />
      <FieldForm
        specs={kind.fields.filter((f) => f.survey !== true)}
        values={parts.fields}
        disabled={false}
        open
        onSet={setField}
      />
      <h3>Case</h3>
      <div className="triple">
        {SIZES.map(({ key, label }) => (
          <NumberBox
            key={key}
            label={label}
            value={parts.size[key]}
            min={1}
            max={10_000}
            onSet={(v) => typeof v === 'number' && keep({ size: { ...parts.size, [key]: v } }, label.toLowerCase())}
          />
        ))}
      </div>
      <h3>Tails, left to right</h3>
      <TailsEditor
        size={parts.size}
        tails={parts.connections}
        disabled={false}
        onSet={(connections, label) => keep({ connections }, label)}
      />
      <div className="key-row">
        <button
          type="button"
          className="key slight"
          onClick={() => keep({ connections: usual() }, 'tails as is usual')}
        >
          Tails as is usual for it
        </button>
      </div>
    </div>
  );
}
