import type { Plan } from '../plan/plan.ts';
import type { Figure } from '../reference/figure.ts';
import type { Quantity } from '../report/quantity.ts';

export interface Limit {
  readonly figure: Quantity;
  /** The user's own figure from the appliance's sheet, with the page it stands on. */
  readonly overridden: { readonly note: string; readonly page: string } | null;
}

/**
 * The general figure of a limit, or the one the appliance's own sheet gives: that goes first.
 * Undefined where neither is known. `scope` is the thing it is asked for.
 */
export function limitFor(plan: Plan, limit: string, scope: string | null, general: Figure): Limit | undefined {
  const all = Object.values(plan.overrides).filter((o) => o.limit === limit);
  const own = all.find((o) => o.scope !== null && o.scope === scope) ?? all.find((o) => o.scope === null);
  if (own && general.is === 'known' && own.unit === general.unit) {
    return {
      figure: {
        lo: own.value,
        hi: own.value,
        value: own.value,
        unit: own.unit,
        digits: general.digits,
        sureness: 'page',
      },
      overridden: { note: own.note, page: own.page },
    };
  }
  if (general.is !== 'known') return undefined;
  const { lo, hi, value, unit, digits, sureness } = general;
  return { figure: { lo, hi, value, unit, digits, sureness }, overridden: null };
}
