import { exact, type Quantity, roundQuantity } from '../../report/quantity.ts';
import type { TallyFigure } from '../../report/tally.ts';

type Told = Pick<TallyFigure, 'id' | 'group' | 'label' | 'order'> & Partial<TallyFigure>;

/** A figure of a tally; what is not told of it is as it is for most: less is better, held against nothing. */
export function figureOf(told: Told): TallyFigure {
  const { figure = null } = told;
  return {
    say: '',
    state: 'none',
    less: true,
    chapter: null,
    ids: [],
    ...told,
    figure: figure && roundQuantity(figure),
  };
}

export const count = (n: number): Quantity => exact(n, '', 0);
export const metres = (mm: number): Quantity => exact(mm / 1000, 'm', 1);

/** So many of them surely, and so many more where that cannot be told. */
export const atLeast = (sure: number, maybe: number): Quantity => ({
  ...count(sure),
  hi: sure + maybe,
  value: maybe === 0 ? sure : null,
});
