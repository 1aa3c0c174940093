import type { FieldSpec } from './define-point.ts';

type More = Partial<Pick<FieldSpec, 'min' | 'max' | 'help'>>;

export function numberField(key: string, label: string, unit: string, more: More = {}): FieldSpec {
  return { key, label, kind: 'number', unit, min: 0, ...more };
}
export function yesNoField(key: string, label: string, help?: string): FieldSpec {
  return { key, label, kind: 'yesNo', ...(help === undefined ? {} : { help }) };
}
export function textField(key: string, label: string, help?: string): FieldSpec {
  return { key, label, kind: 'text', ...(help === undefined ? {} : { help }) };
}
export function choiceField(
  key: string,
  label: string,
  choices: Readonly<Record<string, string>>,
  help?: string,
): FieldSpec {
  return {
    key,
    label,
    kind: 'choice',
    choices: Object.entries(choices).map(([value, said]) => ({ value, label: said })),
    ...(help === undefined ? {} : { help }),
  };
}

/** Is a heat input on the sheet gross or net? Asked of every gas appliance, since the two differ. */
export const inputBasisField: FieldSpec = choiceField(
  'inputBasis',
  'Input is',
  { gross: 'gross', net: 'net', output: 'an output, no input' },
  'The data plate says which. Not told: both are tried.',
);

/** Of the pipe of a meter or stop tap that has no clamp drawn on it. */
export const BONDING = { missing: 'looked for, not there', notNeeded: 'not needed, by an electrician' } as const;

/** What was found or set in this house, and goes with no sheet. */
export const found = (spec: FieldSpec): FieldSpec => ({ ...spec, survey: true });

/** Fields that are only asked once the appliance's own sheet is at hand. */
export const fromSheet = (...specs: readonly FieldSpec[]): readonly FieldSpec[] =>
  specs.map((spec) => ({ ...spec, under: 'From its sheet' }));
