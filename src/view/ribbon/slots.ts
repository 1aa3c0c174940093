import type { RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';

/** A piece of the ribbon that a finger can touch, and the bars that lie in it. */
export interface Slot {
  /** Lowest first; never empty. */
  readonly bars: readonly RibbonBar[];
  /** The one that a drag and the keys move: the only one, the chosen one, or the one last held. Null: it has to be told. */
  readonly hand: RibbonBar | null;
  /** px from the top of the ribbon. */
  readonly top: number;
  readonly height: number;
}

/** Bars nearer in height than a finger is wide share a slot, so that each slot can be touched. */
const LEAST_PX = 44;

interface Group {
  readonly bars: readonly RibbonBar[];
  readonly from: number;
  readonly upTo: number;
}

type Span = readonly [number, number];

/** A group as a finger needs it; beside what it keeps off, on the side where most of it lies. */
function edges({ from, upTo }: Group, off: Span | null): Span {
  const middle = (from + upTo) / 2;
  const half = Math.max(LEAST_PX, upTo - from + LEAST_PX / 2) / 2;
  const [top, bottom] = [middle - half, middle + half];
  if (!off || top >= off[1] || bottom <= off[0]) return [top, bottom];
  if (middle < (off[0] + off[1]) / 2) return [Math.min(top, off[0] - LEAST_PX), off[0]];
  return [off[1], Math.max(bottom, off[1] + LEAST_PX)];
}

/** From above. `y`: height to px; `held`: the run that keys or a finger had last; `off`: what lies over the ribbon there. */
export function slotsOf(
  bars: readonly RibbonBar[],
  y: (z: number) => number,
  held: string | null,
  off: Span | null = null,
): Slot[] {
  const groups: Group[] = [];
  for (const bar of [...bars].sort((a, b) => b.z - a.z || (a.run < b.run ? -1 : 1))) {
    let next: Group = { bars: [bar], from: y(bar.z), upTo: y(bar.z) };
    for (let over = groups.at(-1); over && edges(over, off)[1] > edges(next, off)[0]; over = groups.at(-1)) {
      next = { bars: [...next.bars, ...over.bars], from: over.from, upTo: next.upTo };
      groups.pop();
    }
    groups.push(next);
  }
  return groups.map((group) => {
    const [top, bottom] = edges(group, off);
    const sorted = [...group.bars].sort((a, b) => a.z - b.z);
    const only = sorted.length === 1 ? sorted[0] : undefined;
    const hand = sorted.find((b) => b.run === held) ?? sorted.find((b) => b.chosen) ?? only ?? null;
    return { bars: sorted, hand, top, height: bottom - top };
  });
}

/** The bar a press at `y` px takes: the one that is in hand, else the nearest, where no other is nearly as near. */
export function barAt(slot: Slot, y: (z: number) => number, at: number, apartPx: number): RibbonBar | null {
  if (slot.hand) return slot.hand;
  const [first, second] = slot.bars.map((bar) => ({ bar, off: Math.abs(y(bar.z) - at) })).sort((a, b) => a.off - b.off);
  if (!first) return null;
  return second && second.off - first.off < apartPx ? null : first.bar;
}
