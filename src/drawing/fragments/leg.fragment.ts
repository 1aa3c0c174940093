import type { Fragment, LineItem, Spread, Vec, Wish } from '../display-list.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { makeFragment } from './fragment.ts';

export interface LegSurroundings {
  readonly spread: readonly [Spread | undefined, Spread | undefined];
  readonly trim: Vec;
  readonly gaps: NonNullable<LineItem['gaps']>;
  readonly wishes: readonly Wish[];
}

/** A leg or stretch that lies across the view: its line, what it says of itself. */
export function legFragment(leg: DrawnLeg, around: LegSurroundings): Fragment {
  const [from, upTo] = around.spread;
  const moves = from !== undefined || upTo !== undefined;
  const line: LineItem = {
    t: 'line',
    pts: [leg.a, leg.b],
    style: leg.style,
    ...(around.trim[0] > 0 || around.trim[1] > 0 ? { trim: around.trim } : {}),
    ...(around.gaps.length > 0 ? { gaps: around.gaps } : {}),
    ...(moves ? { spread: [from ?? [], upTo ?? []] } : {}),
  };
  const tag: Wish = {
    w: 'tag',
    letters: leg.letters,
    stretch: `${leg.run} ${leg.tag} ${leg.state}`,
    text: leg.tag,
    ink: leg.unknown ? 'cantTell' : leg.style.ink,
    from: leg.a,
    to: leg.b,
    ...(moves ? { spread: [from ?? [], upTo ?? []] } : {}),
  };
  return makeFragment(leg.record.id, leg.map, 'run', [line], [tag, ...around.wishes]);
}
