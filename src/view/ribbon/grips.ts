import type { LongPart } from '../../drawing/ribbon/long-section.ts';
import { barOfLeg, type RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';
import type { Network } from '../../network/network.ts';
import type { Plan } from '../../plan/plan.ts';
import type { RibbonScale } from './ribbon-scale.ts';
import { type Slot, slotsOf } from './slots.ts';

/** A slot, and where it lies across the ribbon, px. */
export interface Grip extends Slot {
  readonly key: string;
  readonly left: number;
  readonly width: number;
}

const LEAST_PX = 44;

const keyOf = ({ hand, bars }: Slot): string => hand?.run ?? bars.map((b) => b.run).join(' ');

/** Bars of runs, each across the part of the ribbon from `left` on; `off`: px that the tab of the work height takes up there. */
export function barGrips(
  bars: readonly RibbonBar[],
  scale: RibbonScale,
  held: string | null,
  left: number,
  width: number,
  off: readonly [number, number] | null,
): Grip[] {
  const wide = Math.max(width, LEAST_PX);
  return slotsOf(bars, (z) => scale.y(z), held, off).map((slot) => ({
    ...slot,
    key: keyOf(slot),
    left: Math.max(0, left + width - wide),
    width: wide,
  }));
}

/** The level parts of the chosen run in the long section, each where it lies. */
export function partGrips(
  plan: Plan,
  network: Network,
  parts: readonly LongPart[],
  storey: string,
  scale: RibbonScale,
  left: number,
): Grip[] {
  return parts.flatMap((part): Grip[] => {
    const bar = barOfLeg(plan, network, part.leg, storey);
    if (!bar) return [];
    const middle = left + ((part.from + part.upTo) / 2) * scale.perMm;
    const width = Math.max(LEAST_PX, (part.upTo - part.from) * scale.perMm);
    const top = scale.y(part.z) - LEAST_PX / 2;
    return [{ key: part.leg, bars: [bar], hand: bar, top, height: LEAST_PX, left: middle - width / 2, width }];
  });
}
