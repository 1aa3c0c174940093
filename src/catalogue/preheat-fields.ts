import type { FieldSpec } from './define-point.ts';
import { choiceField, numberField } from './field-specs.ts';

const temperature = (key: string, label: string, help: string): FieldSpec => ({
  ...numberField(key, label, '°C', { max: 110, help }),
  under: 'How warm it gets',
});

/** How warm the water of a vessel gets that warms it ahead of something else; null where nobody told. */
export const preheatFields: readonly FieldSpec[] = [
  temperature('highestC', 'At its limit thermostat', 'The hottest its water can leave it before the cut-out opens.'),
  temperature('hotC', 'On a good day', 'What it is usually warmed to.'),
  temperature('lukewarmC', 'On a poor day', 'Half warm, as it stands most of the time.'),
  temperature('coldC', 'Not heated at all', 'Left out: as cold as the main.'),
];

/** What water loses on its way through a valve, or a vessel from cold in to hot out; null where nobody read its sheet. */
export const kvField: FieldSpec = numberField('kv', 'Flow factor Kv of its own water', 'm3/h at 1 bar', {
  max: 100,
  help: 'From its sheet.',
});

/** Where the water goes that a vessel pushes back as it warms up. */
export const expansionField: FieldSpec = choiceField('expansion', 'Room for expansion', {
  vessel: 'an expansion vessel',
  inside: 'air held inside it',
  none: 'none found',
});
