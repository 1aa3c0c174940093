import type { SheetChoice, SheetJob, SheetKind } from './sheet.ts';

const files = import.meta.glob<SheetKind>('./kinds/*.sheet.ts', { eager: true, import: 'default' });

/** Every kind of sheet, in the order they are bound. A second of one id throws. */
export const sheetKinds: readonly SheetKind[] = Object.keys(files)
  .sort()
  .flatMap((path) => files[path] ?? [])
  .sort((a, b) => a.order - b.order || (a.id < b.id ? -1 : 1));

for (const [i, kind] of sheetKinds.entries()) {
  if (sheetKinds.findIndex((k) => k.id === kind.id) !== i) throw new Error(`two kinds of sheet are called ${kind.id}`);
}

/** Every sheet that may be printed of a job, in order. */
export const sheetChoices = (job: SheetJob): readonly SheetChoice[] => sheetKinds.flatMap((kind) => kind.choices(job));

export const kindOf = (key: string): SheetKind | undefined => sheetKinds.find((k) => k.id === key.split(':')[0]);
