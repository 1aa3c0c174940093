import { toolsInOrder } from '../../editor/tools/tools.ts';

/** A key of the bench. Groups are parted by a line; those that have no place on it go under "more". */
export interface ToolKey {
  readonly id: string;
  readonly label: string;
  readonly icon: string;
  readonly letter: string;
  readonly group: 'pipe' | 'house';
  /** Has a place on a phone's bench. */
  readonly phone: boolean;
  /** Has a place on a tablet's. */
  readonly tablet: boolean;
}

/** Where a tool stands on the bench; one that is not named here is found under "more". */
const PLACES: readonly Pick<ToolKey, 'id' | 'group' | 'phone'>[] = [
  { id: 'run', group: 'pipe', phone: true },
  { id: 'tee', group: 'pipe', phone: true },
  { id: 'select', group: 'pipe', phone: true },
  { id: 'item', group: 'pipe', phone: true },
  { id: 'tape', group: 'pipe', phone: false },
  { id: 'point', group: 'house', phone: false },
  { id: 'wall', group: 'house', phone: false },
  { id: 'opening', group: 'house', phone: false },
];

let keys: readonly ToolKey[] | undefined;

/** Every tool the editor has, in the order of the bench. */
export function toolKeys(): readonly ToolKey[] {
  keys ??= inOrder();
  return keys;
}

function inOrder(): readonly ToolKey[] {
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
        tablet: known !== undefined,
      };
    });
}
