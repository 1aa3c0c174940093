import type { Plan } from '../../plan/plan.ts';

/** Writes the fields that were told; a field that was left out stays as it is. */
export function change<T extends object>(record: T, fields: { readonly [K in keyof T]?: T[K] | undefined }): void {
  for (const [key, value] of Object.entries(fields)) {
    if (value !== undefined) Reflect.set(record, key, value);
  }
}

/** What a record is called in the label of a step: its own name, else what it is. */
export function called(plan: Plan, id: string, what: string): string {
  for (const map of ['points', 'rooms', 'voids', 'openings', 'runs', 'items', 'storeys', 'options'] as const) {
    const record = plan[map][id];
    if (record && record.name !== '') return record.name;
  }
  return what;
}
