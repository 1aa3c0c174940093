import { ROOM_USES } from '../../catalogue/room-uses.ts';
import type { Ask, AskKey, InHand } from '../editor-api.ts';
import type { Quarter } from './room-box.ts';
import { sizesKeys } from './wall-ask.ts';

/** Digits of the two sizes of a room, "3600x2800" as it is typed. */
export interface TypedSizes {
  readonly across: string;
  /** Null while the first is typed. */
  readonly up: string | null;
}

const MOST_DIGITS = 6;

/** What was typed with one key more; undefined where the key is not for sizes. */
export function typeSize(now: TypedSizes, key: string): TypedSizes | undefined {
  const { across, up } = now;
  const cut = (s: string): string => s.replace(/^0+/, '').slice(0, MOST_DIGITS);
  if (/^\d+$/.test(key)) return up === null ? { across: cut(across + key), up } : { across, up: cut(up + key) };
  if (key === 'x' || key === '*') return across === '' ? now : { across, up: up ?? '' };
  if (key !== 'Backspace') return undefined;
  if (up === null) return { across: across.slice(0, -1), up };
  return up === '' ? { across, up: null } : { across, up: up.slice(0, -1) };
}

export const saySizes = ({ across, up }: TypedSizes): string => (up === null ? across : `${across} x ${up}`);

const usesKeys = ({ roomUse }: InHand): AskKey[] =>
  ROOM_USES.map(({ id, label }) => ({ key: `use ${id}`, label: label.toLowerCase(), on: id === roomUse }));

/** Keys to a row where nothing else is asked. */
const IN_ROW = 4;

/** What the pad shows once a closed space was tapped. */
export function nameAsk(inHand: InHand): Ask {
  const keys = usesKeys(inHand);
  const rows = Array.from({ length: Math.ceil(keys.length / IN_ROW) }, (_, i) =>
    keys.slice(i * IN_ROW, (i + 1) * IN_ROW),
  );
  const enter = inHand.roomUse === '' ? 'no name' : 'as before';
  return { title: 'What is this room?', figure: null, unit: '', says: [], rows, enter };
}

/** What the pad shows once a corner of a room is there. */
export function roomAsk(typed: TypedSizes, way: Quarter, inHand: InHand, note: string | null): Ask {
  const both = typed.up !== null && typed.up !== '';
  return {
    title: 'Room from this corner',
    figure: saySizes(typed),
    unit: `mm ${inHand.sizes}`,
    says: [note ?? (typed.across === '' ? 'Across, then up the sheet; or tap the other corner.' : '')].filter(
      (s) => s !== '',
    ),
    rows: [
      [
        { key: 'ArrowLeft', label: 'to the left', on: way.across < 0 },
        { key: 'ArrowRight', label: 'to the right', on: way.across > 0 },
        { key: 'ArrowUp', label: 'up', on: way.up > 0 },
        { key: 'ArrowDown', label: 'down', on: way.up < 0 },
      ],
      usesKeys(inHand),
      sizesKeys(inHand.sizes === 'middle' ? 'inside' : inHand.sizes, ['inside', 'outside']),
    ],
    enter: both ? 'draw' : typed.across === '' ? 'only a name' : 'by',
  };
}

/** What "use kitchen" chooses; undefined where it is another key. */
export function roomUseOf(key: string): string | undefined {
  return ROOM_USES.find((u) => key === `use ${u.id}`)?.id;
}
