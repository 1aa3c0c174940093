import { toolsInOrder } from '../../editor/tools/tools.ts';

/** A key of the bench. Groups are parted by a line; those with `phone` stay on a phone's bench, the others go under "more". */
export interface ToolKey {
  readonly id: string;
  readonly label: string;
  readonly icon: string;
  readonly letter: string;
  readonly group: 'pipe' | 'house';
  readonly phone: boolean;
}

/** Where a tool stands on the bench; one that is not named here comes after the pipes. */
const PLACES: readonly Pick<ToolKey, 'id' | 'group' | 'phone'>[] = [
  { id: 'run', group: 'pipe', phone: true },
  { id: 'tee', group: 'pipe', phone: false },
  { id: 'select', group: 'pipe', phone: true },
  { id: 'item', group: 'pipe', phone: false },
  { id: 'tape', group: 'pipe', phone: true },
  { id: 'point', group: 'house', phone: false },
  { id: 'wall', group: 'house', phone: false },
  { id: 'opening', group: 'house', phone: false },
];

/** Every tool the editor has, in the order of the bench. */
export function toolKeys(): readonly ToolKey[] {
  const place = (id: string): number => {
    const at = PLACES.findIndex((p) => p.id === id);
    return at < 0 ? PLACES.length : at;
  };
  return [...toolsInOrder()]
    .sort((a, b) => place(a.id) - place(b.id) || a.order - b.order)
    .map((t) => {
      const known = PLACES.find((p) => p.id === t.id);
      return {
        id: t.id,
        label: t.label,
        icon: t.id,
        letter: t.key.toUpperCase(),
        group: known?.group ?? 'house',
        phone: known?.phone ?? false,
      };
    });
}
