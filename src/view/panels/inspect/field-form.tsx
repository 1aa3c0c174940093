import type { FieldSpec } from '../../../catalogue/define-point.ts';
import type { Field } from '../../../plan/records/pipework.ts';
import { KickTurn } from '../../look/kick.tsx';
import '../../things/things.css';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { NumberBox } from './number-box.tsx';
import { SelectBox } from './select-box.tsx';
import { TextBox } from './text-box.tsx';

interface Props {
  readonly specs: readonly FieldSpec[];
  readonly values: Readonly<Record<string, Field>>;
  readonly disabled: boolean;
  /** Groups stand open from the start. */
  readonly open?: boolean;
  readonly onSet: (key: string, value: Field) => boolean;
}

/** More choices than this stand in a list instead of a row of keys. */
const MOST_KEYS = 4;

const isTold = (value: Field | undefined): boolean => value !== undefined && value !== null && value !== '';

/** The form of a kind, made from what the kind asks: a new kind needs no form of its own. Groups are folded away. */
export function FieldForm({ specs, values, disabled, open = false, onSet }: Props) {
  const groups = [...new Set(specs.flatMap((s) => s.under ?? []))];
  const field = (spec: FieldSpec) => (
    <OneField
      key={spec.key}
      spec={spec}
      value={values[spec.key] ?? null}
      disabled={disabled}
      onSet={(v) => onSet(spec.key, v)}
    />
  );
  return (
    <>
      {specs.filter((s) => s.under === undefined).map(field)}
      {groups.map((under) => {
        const of = specs.filter((s) => s.under === under);
        const told = of.filter((s) => isTold(values[s.key])).length;
        return (
          <details key={under} className="field-group" open={open}>
            <summary>
              <span className="group-name">{under}</span>
              <span className="group-told">{told === 0 ? 'nothing told' : `${told} of ${of.length} told`}</span>
              <KickTurn />
            </summary>
            <div className="group-fields">{of.map(field)}</div>
          </details>
        );
      })}
    </>
  );
}

interface OneProps {
  readonly spec: FieldSpec;
  readonly value: Field;
  readonly disabled: boolean;
  readonly onSet: (value: Field) => boolean;
}

function OneField({ spec, value, disabled, onSet }: OneProps) {
  const { label, help } = spec;
  if (spec.kind === 'number') {
    return (
      <NumberBox
        label={label}
        value={value}
        unit={spec.unit}
        help={help}
        min={spec.min}
        max={spec.max}
        range
        empty
        disabled={disabled}
        onSet={onSet}
      />
    );
  }
  if (spec.kind === 'yesNo') {
    const chosen = typeof value === 'boolean' ? value : null;
    return (
      <ChoiceKeys label={label} choices={YES_NO} chosen={chosen} help={help} disabled={disabled} onChoose={onSet} />
    );
  }
  if (spec.kind === 'choice') {
    const chosen = typeof value === 'string' ? value : null;
    const choices = [...(spec.choices ?? []), { value: null, label: 'not told' }];
    const Many = choices.length > MOST_KEYS ? SelectBox : ChoiceKeys;
    return <Many label={label} choices={choices} chosen={chosen} help={help} disabled={disabled} onChoose={onSet} />;
  }
  return (
    <TextBox
      label={label}
      value={typeof value === 'string' ? value : ''}
      help={help}
      disabled={disabled}
      onSet={(v) => onSet(v === '' ? null : v)}
    />
  );
}
