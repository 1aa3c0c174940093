import type { RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';
import { levelOf } from '../../drawing/text/say-level.ts';
import type { Plan } from '../../plan/plan.ts';

/** "assumed, 100 to 200": what a height that nobody measured lies between, off the floor; null where it was told. */
export function sayAssumed(bar: RibbonBar, floor: number): string | null {
  if (!bar.assumed) return null;
  return `assumed, ${Math.round(bar.assumed.lo - floor)} to ${Math.round(bar.assumed.hi - floor)}`;
}

/** A bar in words: "270 off the floor, assumed, 100 to 300, falls 45 in this piece". */
export function sayBar(plan: Plan, bar: RibbonBar, storey: string, floor: number): string {
  const level = levelOf(plan, bar.z, storey);
  return [
    /^\d/.test(level) ? `${level} off the floor` : level,
    sayAssumed(bar, floor),
    bar.fallMm > 0 ? `falls ${bar.fallMm}` : null,
    bar.here ? null : `${(bar.awayMm / 1000).toFixed(1)} m away`,
  ]
    .filter((part) => part !== null)
    .join(', ');
}

export const capital = (words: string): string => words.charAt(0).toUpperCase() + words.slice(1);
