import type { Axis } from './schema/table-schema.ts';

/** Where a place falls on an axis: one listed key, or a mix of two neighbours whose weights add to 1. */
export type OnAxis =
  | { readonly is: 'known'; readonly parts: readonly { readonly index: number; readonly weight: number }[] }
  | { readonly is: 'outside' }
  | { readonly is: 'unlisted' };

const at = (index: number): OnAxis => ({ is: 'known', parts: [{ index, weight: 1 }] });

/** Named axes know only their own names; numbered ones follow their rule and are outside past either end. */
export function place(axis: Axis, keys: readonly string[], asked: string | number): OnAxis {
  const listed = keys.indexOf(String(asked));
  if (listed >= 0) return at(listed);
  if (axis.lookUp === 'none') return { is: 'unlisted' };
  const wanted = Number(asked);
  const points = keys.map(Number);
  const above = points.findIndex((p) => p >= wanted);
  const first = points[0] ?? Number.NaN;
  if (Number.isNaN(wanted) || above < 0 || wanted < first) return { is: 'outside' };
  if (points[above] === wanted || axis.lookUp === 'next-size-up') return at(above);
  if (axis.lookUp === 'next-size-down') return at(above - 1);
  const below = points[above - 1] ?? first;
  const weight = (wanted - below) / ((points[above] ?? wanted) - below);
  return {
    is: 'known',
    parts: [
      { index: above - 1, weight: 1 - weight },
      { index: above, weight },
    ],
  };
}
