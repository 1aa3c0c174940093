import type { Field } from '../../../plan/records/pipework.ts';

/** What somebody typed into a number's box. `wrong` says what would be right. */
export type TypedNumber =
  | { readonly ok: true; readonly value: number | { readonly lo: number; readonly hi: number } | null }
  | { readonly ok: false; readonly wrong: string };

export interface NumberBounds {
  readonly min?: number | undefined;
  readonly max?: number | undefined;
  /** "24 to 30" is taken where a figure may be only bounded. */
  readonly range?: boolean | undefined;
  /** Empty means "not told". */
  readonly empty?: boolean | undefined;
  /** What the figure is in. Where that is mm, "4.9 m" and "12 mm" are taken as they are said. */
  readonly unit?: string | undefined;
}

const SAID_IN: Readonly<Record<string, number>> = { mm: 1, cm: 10, m: 1000 };

/** A tenth of a mm is kept: metres times a thousand would bring in digits nobody said. */
function num(text: string, unit: string | undefined): number {
  const said = /^(.*\d)\s*(mm|cm|m)$/.exec(text.trim());
  const times = unit === 'mm' ? SAID_IN[said?.[2] ?? ''] : undefined;
  if (!said || times === undefined) return Number(text.replace(',', '.'));
  return Math.round(Number((said[1] ?? '').replace(',', '.')) * times * 10) / 10;
}

function within(n: number, { min, max }: NumberBounds): string | null {
  if (!Number.isFinite(n)) return 'A number is wanted.';
  if (min !== undefined && n < min) return `At least ${min}.`;
  if (max !== undefined && n > max) return `At most ${max}.`;
  return null;
}

/** Reads "850", "0,5", "24 to 30" or nothing. */
export function readNumber(text: string, bounds: NumberBounds): TypedNumber {
  const said = text.trim();
  if (said === '') return bounds.empty ? { ok: true, value: null } : { ok: false, wrong: 'A number is wanted.' };
  const parts = said.split(/\s*(?:to|–|\.\.)\s*/);
  if (parts.length === 2 && bounds.range) {
    const [lo, hi] = [num(parts[0] ?? '', bounds.unit), num(parts[1] ?? '', bounds.unit)];
    const wrong = within(lo, bounds) ?? within(hi, bounds) ?? (lo > hi ? 'Lowest first.' : null);
    return wrong === null ? { ok: true, value: lo === hi ? lo : { lo, hi } } : { ok: false, wrong };
  }
  const n = num(said, bounds.unit);
  const wrong = within(n, bounds);
  return wrong === null ? { ok: true, value: n } : { ok: false, wrong };
}

/** A stored figure as it stands in its box. */
export function showNumber(value: Field | undefined): string {
  if (typeof value === 'number') return String(Math.round(value * 10) / 10);
  if (value !== null && typeof value === 'object') return `${value.lo} to ${value.hi}`;
  return typeof value === 'string' ? value : '';
}
