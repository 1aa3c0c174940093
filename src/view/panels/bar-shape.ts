import type { Bar, State } from '../../report/section.ts';

/** The line ends at this much of the limit; what lies past it is shown by chevrons. */
export const SCALE_TOP = 1.5;

/** Where everything stands on a bar's line, each from 0 (left end) to 1 (right end). */
export interface BarShape {
  readonly state: State;
  /** Value of the right end. */
  readonly top: number;
  readonly post: number | null;
  readonly solid: readonly [number, number] | null;
  readonly hatched: readonly [number, number] | null;
  readonly tick: number | null;
  /** Upright at the lowest with dots going on: nothing bounds it from above. */
  readonly open: number | null;
  /** Part of it lies past the right end. */
  readonly past: boolean;
}

const clamp = (n: number): number => Math.min(1, Math.max(0, n));

/** End of the line where there is no limit: the next 1, 2 or 5 of its power of ten above the figure. */
function niceTop(n: number): number {
  if (!(n > 0)) return 1;
  const power = 10 ** Math.floor(Math.log10(n));
  return ([1, 2, 5, 10].find((m) => m * power >= n * 1.05) ?? 10) * power;
}

export function barShape(bar: Bar): BarShape {
  const { figure, limit, state } = bar;
  const { lo, hi, value } = figure;
  const top = limit !== null && limit > 0 ? limit * SCALE_TOP : niceTop(hi ?? lo);
  const x = (n: number): number => clamp(n / top);
  const post = limit !== null && limit > 0 ? x(limit) : null;
  const empty = { state, top, post, solid: null, hatched: null, tick: null, open: null, past: false } as const;
  if (hi === null) return { ...empty, open: x(lo), past: lo > top };
  if (lo > top) return { ...empty, past: true };
  const tick = value === null ? null : x(value);
  const past = hi > top;
  if (state === 'stop') return { ...empty, hatched: [x(lo), x(hi)], tick, past };
  if (state === 'check' && limit !== null && lo < limit && hi > limit) {
    return { ...empty, solid: [x(lo), x(limit)], hatched: [x(limit), x(hi)], tick, past };
  }
  return { ...empty, solid: [x(lo), x(hi)], tick, past };
}

/** "0", "0.5", "1.00": figures under the line, short where they may be. */
export function axisFigure(n: number): string {
  return String(Number(n.toPrecision(3)));
}
