import type { Xy } from '../../plan/records/parts.ts';
import type { Ask, AskKey, Sizes } from '../editor-api.ts';
import { type ClosingError, closingError, isMeasuring, layChain, type WallChain } from './wall-chain.ts';
import { aimed, nextTurn, type WallCtx } from './wall-steps.ts';

const WAYS: readonly { readonly key: string; readonly label: string; readonly turnDeg: number }[] = [
  { key: 'ArrowLeft', label: 'left', turnDeg: 90 },
  { key: 'ArrowUp', label: 'ahead', turnDeg: 0 },
  { key: 'ArrowRight', label: 'right', turnDeg: -90 },
  { key: 'ArrowDown', label: 'back', turnDeg: 180 },
];

/** The first wall goes up, down or across the sheet: nobody walks along a wall yet. */
const ON_THE_SHEET: Readonly<Record<string, string>> = { ahead: 'up', back: 'down' };

/** The turn that a key of the pad or a keyboard's arrow tells. */
export const turnOf = (key: string): number | undefined => WAYS.find((w) => w.key === key)?.turnDeg;

const SIZES: readonly { readonly sizes: Sizes; readonly label: string }[] = [
  { sizes: 'inside', label: 'inside' },
  { sizes: 'outside', label: 'outside' },
  { sizes: 'middle', label: 'middle' },
];

export const sizesKeys = (now: Sizes, offered: readonly Sizes[] = ['inside', 'outside', 'middle']): AskKey[] =>
  SIZES.filter((s) => offered.includes(s.sizes)).map(({ sizes, label }) => ({
    key: `sizes ${sizes}`,
    label,
    on: sizes === now,
  }));

/** What "sizes inside" chooses; undefined where it is another key. */
export function sizesOf(key: string): Sizes | undefined {
  return SIZES.find((s) => key === `sizes ${s.sizes}`)?.sizes;
}

/** Enclosing something takes so many walls, the one that closes them included. */
const LEAST_WALLS = 3;

/** What is missing to the first corner, with the walls that are drawn taken as closing. */
export function errorOf(chain: WallChain | null): { corners: Xy[]; error: ClosingError } | undefined {
  if (!chain || chain.walls.length < LEAST_WALLS) return undefined;
  const corners = layChain(chain, true);
  const error = closingError(corners);
  return error && { corners, error };
}

const figure = (mm: number): string => String(Math.round(Math.abs(mm)));

/** "Closing error 24 along, 8 across: 1 in 430." */
function sayError(error: ClosingError): string {
  const parts = `${figure(error.alongMm)} along, ${figure(error.acrossMm)} across`;
  if (!isMeasuring(error)) return `To the first corner: ${parts}.`;
  const outOf = error.mm < 1 ? '' : `, 1 in ${Math.round(error.lengthMm / error.mm)}`;
  return `Closing error ${parts}${outOf}.`;
}

function closingKeys(ctx: WallCtx): { says: string[]; keys: AskKey[] } {
  const { chain } = ctx.memory;
  const found = errorOf(chain);
  if (!found) {
    const two = chain?.walls.length === LEAST_WALLS - 1;
    return { says: [], keys: two ? [{ key: 'close', label: 'add a wall' }] : [] };
  }
  const keys: AskKey[] = isMeasuring(found.error)
    ? [
        { key: 'spread', label: 'spread it' },
        { key: 'lastTakes', label: 'last wall takes it' },
      ]
    : [];
  return { says: [sayError(found.error)], keys: [...keys, { key: 'close', label: 'add a wall' }] };
}

/** What the pad shows while walls are told. */
export function wallAsk(ctx: WallCtx): Ask | null {
  const { memory, inHand } = ctx;
  const { chain, typed, angle } = memory;
  if (!chain) return null;
  const turn = Math.round(nextTurn(memory, chain));
  const n = chain.walls.length + 1;
  if (angle !== null) {
    return {
      title: `Wall ${n}: turn by`,
      figure: angle,
      unit: 'degrees',
      says: ['Type the angle, then to which side.'],
      rows: [
        WAYS.filter((w) => w.key === 'ArrowLeft' || w.key === 'ArrowRight').map(({ key, label }) => ({
          key,
          label,
          icon: label,
        })),
      ],
      enter: null,
    };
  }
  // Where the hand points the pad says no way: it would change with every move.
  const points = memory.turnDeg === null && aimed(memory) !== null;
  const known = points ? undefined : WAYS.find((w) => w.turnDeg === turn || (turn === -180 && w.turnDeg === 180));
  const first = chain.walls.length === 0;
  const labelOf = ({ label }: (typeof WAYS)[number]): string => (first ? ON_THE_SHEET[label] : undefined) ?? label;
  const way = (known && labelOf(known)) ?? `${Math.abs(turn)} degrees ${turn > 0 ? 'left' : 'right'}`;
  const closing = closingKeys(ctx);
  return {
    title: points ? `Wall ${n}` : `Wall ${n}, ${way}`,
    figure: typed,
    unit: `mm ${inHand.sizes}`,
    says: closing.says,
    rows: [
      [
        ...WAYS.map((w) => ({ key: w.key, label: labelOf(w), on: w === known })),
        { key: 'angle', label: 'angle', on: !points && known === undefined },
      ],
      closing.keys,
      [...sizesKeys(inHand.sizes), ...(chain.walls.length > 0 ? [{ key: 'repeat', label: 'repeat last' }] : [])],
    ].filter((row) => row.length > 0),
    enter: typed === '' ? 'done' : 'next',
  };
}
