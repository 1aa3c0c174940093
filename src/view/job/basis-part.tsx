import type { Basis } from '../../plan/records/basis.ts';
import { useEditorState } from '../app/use-session.ts';
import { ChoiceKeys } from '../panels/inspect/choice-keys.tsx';
import { NumberBox } from '../panels/inspect/number-box.tsx';
import { useChange } from '../panels/inspect/use-change.ts';

const GASES = [
  { value: 'natural', label: 'natural gas' },
  { value: 'propane', label: 'propane' },
] as const;

const orNull = (v: unknown): number | null => (typeof v === 'number' ? v : null);

/** What the sums rest on. */
export function BasisPart() {
  const basis = useEditorState((s) => s.plan.basis);
  const { disabled, run } = useChange();
  const setBasis = (change: Partial<Basis>): boolean => run('basis.set', { change });
  return (
    <>
      <ChoiceKeys<Basis['gas']>
        label="Gas"
        choices={GASES}
        chosen={basis.gas}
        disabled={disabled}
        onChoose={(gas) => setBasis({ gas })}
      />
      <label className="field">
        <span className="field-label">Surveyed on</span>
        <span className="field-box">
          <input
            type="date"
            readOnly={disabled}
            value={basis.surveyDate ?? ''}
            onChange={(e) => setBasis({ surveyDate: e.target.value === '' ? null : e.target.value })}
          />
        </span>
      </label>
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
    </>
  );
}
