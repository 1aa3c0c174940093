import type { FieldSpec } from '../../../catalogue/define-point.ts';
import type { Field } from '../../../plan/records/pipework.ts';
import { ChoiceKeys, YES_NO } from './choice-keys.tsx';
import { NumberBox } from './number-box.tsx';
import { SelectBox } from './select-box.tsx';
import { TextBox } from './text-box.tsx';

interface Props {
  readonly specs: readonly FieldSpec[];
  readonly values: Readonly<Record<string, Field>>;
  readonly disabled: boolean;
  readonly onSet: (key: string, value: Field) => boolean;
}

/** More choices than this stand in a list instead of a row of keys. */
const MOST_KEYS = 4;

/** The form of a kind, made from what the kind asks: a new kind needs no form of its own. */
export function FieldForm({ specs, values, disabled, onSet }: Props) {
  return (
    <>
      {specs.map((spec) => (
        <OneField
          key={spec.key}
          spec={spec}
          value={values[spec.key] ?? null}
          disabled={disabled}
          onSet={(v) => onSet(spec.key, v)}
        />
      ))}
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
