import type { Field, FieldSpec, PointKind } from './define-point.ts';

/** A field as it is said: "24 to 30 kW", "yes", the choice's own label; undefined where it was not told. */
export function sayField(spec: FieldSpec, value: Field | undefined): string | undefined {
  if (value === undefined || value === null || value === '') return undefined;
  if (typeof value === 'boolean') return value ? 'yes' : 'no';
  const unit = spec.unit === undefined || spec.unit === '' ? '' : ` ${spec.unit}`;
  if (typeof value === 'number') return `${value}${unit}`;
  if (typeof value === 'object') return `${value.lo} to ${value.hi}${unit}`;
  return spec.choices?.find((c) => c.value === value)?.label ?? value;
}

const lower = (text: string): string => text.charAt(0).toLowerCase() + text.slice(1);

/**
 * One sentence: the kind, the point's own name where it differs, what pipes meet there, what was told.
 * "Boiler (New combi): connections heating flow 22, gas 22; heating input 24 kW."
 */
export function sayPoint(label: string, specs: readonly FieldSpec[]): PointKind['describe'] {
  return (point) => {
    const name = point.name !== '' && point.name !== label ? ` (${point.name})` : '';
    const meets = point.connections.map((c) => (c.size === null ? lower(c.label) : `${lower(c.label)} ${c.size}`));
    const told = specs.flatMap((spec) => {
      const said = sayField(spec, point.fields[spec.key]);
      return said === undefined ? [] : [`${lower(spec.label)} ${said}`];
    });
    const parts = [
      meets.length === 0 ? [] : [`${meets.length === 1 ? 'connection' : 'connections'} ${meets.join(', ')}`],
      told.length === 0 ? [] : [told.join(', ')],
      point.sureness === 'assumed' ? ['assumed'] : [],
    ].flat();
    return `${label}${name}${parts.length === 0 ? '' : `: ${parts.join('; ')}`}.`;
  };
}

/** What of a kind is said: its fields. Kept apart so that a kind names its label and fields once. */
export function spoken(label: string, fields: readonly FieldSpec[]): Pick<PointKind, 'label' | 'fields' | 'describe'> {
  return { label, fields, describe: sayPoint(label, fields) };
}
