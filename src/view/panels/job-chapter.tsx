import { useState } from 'react';
import type { Basis } from '../../plan/records/basis.ts';
import type { Storey } from '../../plan/records/building.ts';
import { useEditorState } from '../app/use-session.ts';
import { ChoiceKeys } from './inspect/choice-keys.tsx';
import { NumberBox } from './inspect/number-box.tsx';
import { TextBox } from './inspect/text-box.tsx';
import { useChange } from './inspect/use-change.ts';
import './inspect/inspect.css';

const GASES = [
  { value: 'natural', label: 'natural gas' },
  { value: 'propane', label: 'propane' },
] as const;

const LINES: readonly {
  readonly key: 'reason' | 'address' | 'customer' | 'owner' | 'note';
  readonly label: string;
  readonly rows: number;
}[] = [
  { key: 'reason', label: 'What is to be done', rows: 2 },
  { key: 'address', label: 'Address', rows: 2 },
  { key: 'customer', label: 'Customer', rows: 1 },
  { key: 'owner', label: 'Legal owner', rows: 1 },
  { key: 'note', label: 'Notes', rows: 3 },
];

/** Who, where and why; what the sums rest on; the floors; the options. */
export function JobChapter() {
  const plan = useEditorState((s) => s.plan);
  const { disabled, run } = useChange();
  const { basis, job } = plan;
  const setBasis = (change: Partial<Basis>): boolean => run('basis.set', { change });
  const orNull = (v: unknown): number | null => (typeof v === 'number' ? v : null);
  return (
    <div className="inspect">
      <TextBox
        label="Name of the job"
        value={plan.name}
        disabled={disabled}
        onSet={(name) => run('plan.rename', { name })}
      />
      {LINES.map(({ key, label, rows }) => (
        <TextBox
          key={key}
          label={label}
          rows={rows}
          value={job[key]}
          disabled={disabled}
          onSet={(value) => run('plan.rename', { job: { [key]: value } })}
        />
      ))}
      <h3>Basis of the sums</h3>
      <ChoiceKeys<Basis['gas']>
        label="Gas"
        choices={GASES}
        chosen={basis.gas}
        disabled={disabled}
        onChoose={(gas) => setBasis({ gas })}
      />
      <SurveyDate value={basis.surveyDate} disabled={disabled} onSet={(surveyDate) => setBasis({ surveyDate })} />
      <NumberBox
        label="Calorific value, gross"
        value={basis.calorificValueMJPerM3}
        unit="MJ/m³"
        min={1}
        empty
        help="From the bill. Not told: the usual figure, with its bounds."
        disabled={disabled}
        onSet={(v) => setBasis({ calorificValueMJPerM3: orNull(v) })}
      />
      <div className="pair">
        <NumberBox
          label="Flow"
          value={basis.designFlowC}
          unit="°C"
          min={1}
          max={100}
          empty
          disabled={disabled}
          onSet={(v) => setBasis({ designFlowC: orNull(v) })}
        />
        <NumberBox
          label="Return"
          value={basis.designReturnC}
          unit="°C"
          min={1}
          max={100}
          empty
          disabled={disabled}
          onSet={(v) => setBasis({ designReturnC: orNull(v) })}
        />
      </div>
      <h3>Floors</h3>
      {Object.values(plan.storeys)
        .sort((a, b) => b.floorMm - a.floorMm)
        .map((s) => (
          <Floor key={s.id} storey={s} />
        ))}
      <Options />
    </div>
  );
}

function SurveyDate({
  value,
  disabled,
  onSet,
}: {
  readonly value: string | null;
  readonly disabled: boolean;
  readonly onSet: (v: string | null) => void;
}) {
  return (
    <label className="field">
      <span className="field-label">Surveyed on</span>
      <span className="field-box">
        <input
          type="date"
          readOnly={disabled}
          value={value ?? ''}
          onChange={(e) => onSet(e.target.value === '' ? null : e.target.value)}
        />
      </span>
    </label>
  );
}

function Floor({ storey }: { readonly storey: Storey }) {
  const { disabled, run } = useChange();
  const set = (change: object): boolean => run('storey.set', { storey: storey.id, change });
  const measure = (key: 'floorMm' | 'ceilingMm' | 'buildUpMm', label: string) => (
    <NumberBox
      label={label}
      value={storey[key]}
      disabled={disabled}
      onSet={(v) => typeof v === 'number' && set({ [key]: v, sureness: 'seen' })}
    />
  );
  return (
    <>
      <TextBox
        label={storey.sureness === 'assumed' ? 'Floor, heights assumed until measured' : 'Floor'}
        value={storey.name}
        disabled={disabled}
        onSet={(name) => set({ name })}
      />
      <div className="triple">
        {measure('floorMm', 'Level')}
        {measure('ceilingMm', 'To ceiling')}
        {measure('buildUpMm', 'Build-up')}
      </div>
    </>
  );
}

function Options() {
  const options = useEditorState((s) => s.plan.options);
  const { disabled, run } = useChange();
  const [name, setName] = useState('');
  const add = (): void => {
    if (name.trim() !== '' && run('option.add', { name: name.trim() })) setName('');
  };
  return (
    <>
      <h3>Options</h3>
      {Object.values(options).map((o) => (
        <TextBox
          key={o.id}
          label="Option"
          value={o.name}
          disabled={disabled}
          onSet={(value) => run('option.set', { option: o.id, change: { name: value } })}
        />
      ))}
      <form
        className="key-row"
        onSubmit={(e) => {
          e.preventDefault();
          add();
        }}
      >
        <label className="field grow">
          <span className="field-label">A further option</span>
          <span className="field-box">
            <input value={name} onChange={(e) => setName(e.target.value)} />
          </span>
        </label>
        <button type="submit" className="key slight" aria-disabled={disabled || name.trim() === ''}>
          Add
        </button>
      </form>
    </>
  );
}
