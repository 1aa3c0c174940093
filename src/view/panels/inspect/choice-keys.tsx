import { RadioKeys } from '../../look/radio-keys.tsx';

export interface Choice<T> {
  readonly value: T;
  readonly label: string;
}

interface Props<T> {
  readonly label: string;
  readonly choices: readonly Choice<T>[];
  readonly chosen: T;
  readonly help?: string | undefined;
  readonly disabled?: boolean;
  readonly onChoose: (value: T) => void;
}

/** One of a few, as keys in a row, with a line of help below. */
export function ChoiceKeys<T extends string | number | boolean | null>(props: Props<T>) {
  const { label, choices, chosen, help, disabled = false, onChoose } = props;
  return (
    <div className="field">
      <RadioKeys legend={label} choices={choices} chosen={chosen} disabled={disabled} onChoose={onChoose} />
      {help !== undefined && <p className="field-help">{help}</p>}
    </div>
  );
}

export const YES_NO: readonly Choice<boolean | null>[] = [
  { value: true, label: 'yes' },
  { value: false, label: 'no' },
  { value: null, label: 'not told' },
];
