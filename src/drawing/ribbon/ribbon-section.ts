import { insideArea } from '../../geometry/outlines.ts';
import { voidHeights } from '../../geometry/void-stretches.ts';
import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Void } from '../../plan/records/building.ts';
import type { Xy } from '../../plan/records/parts.ts';
import type { Item, LineStyle, Vec } from '../display-list.ts';
import { joistZ } from '../face/face-void.ts';
import { rectangle } from '../face/face-wall.ts';
import { joistBox } from '../face/joist-section.ts';
import { slabBetween } from '../face/slabs.ts';
import { PEN } from '../look/tokens.ts';

const EDGE: LineStyle = { ink: 'wallEdge', pen: PEN.opening, dash: [], fit: false };
const CEILING: LineStyle = { ink: 'wallEdge', pen: PEN.doorLeaf, dash: [], fit: false };
/** Where in the width of the ribbon a void shows its joists. */
const JOISTS_AT = [0.22, 0.5, 0.78];
/** Breadth of a drawn joist by its depth, as timbers mostly are: only its place is true here. */
const BREADTH = 0.6;

export interface CutVoid {
  readonly record: Void;
  readonly bottom: number;
  readonly top: number;
}

/** Voids over or under a place whose heights are known, lowest first; all of the storey's where no place was told. */
export function voidsAtPlace(plan: Plan, storey: string, at: Xy | null, alive: Alive): CutVoid[] {
  return Object.values(plan.voids)
    .filter((v) => v.storey === storey && v.kind !== 'slab' && alive.has('voids', v.id))
    .filter((v) => at !== null && insideArea(at, v.outline, v.holes))
    .flatMap((record): CutVoid[] => {
      const heights = voidHeights(plan, record);
      return heights ? [{ record, bottom: heights.bottom, top: heights.top }] : [];
    })
    .sort((a, b) => a.bottom - b.bottom || (a.record.id < b.record.id ? -1 : 1));
}

/** A true vertical section: slabs, voids with their joists, the ceiling, all at their heights. */
export function sectionItems(
  plan: Plan,
  storeyId: string,
  voids: readonly CutVoid[],
  left: number,
  right: number,
  over: number,
): Item[] {
  const storey = plan.storeys[storeyId];
  if (!storey) return [];
  const across = { from: left, upTo: right };
  const { floorMm: floor } = storey;
  const ceiling = floor + storey.ceilingMm;
  const slab = (low: number, high: number): Item[] =>
    high - low < 1
      ? []
      : [
          {
            t: 'area',
            rings: [rectangle(across, low, high)],
            fill: slabBetween(plan, storeyId, low, high) ? 'slab' : 'wall',
            edge: EDGE,
          },
        ];
  const level = (z: number, style: LineStyle): Item => ({
    t: 'line',
    pts: [
      [left, z],
      [right, z],
    ],
    style,
  });
  const items: Item[] = [
    { t: 'area', rings: [rectangle(across, floor, ceiling)], fill: 'room' },
    ...slab(floor - storey.buildUpMm, floor),
    ...slab(ceiling, over),
  ];
  for (const { record, bottom, top } of voids) {
    items.push({ t: 'area', rings: [rectangle(across, bottom, top)], fill: 'void' });
    const z = joistZ(plan, record);
    for (const part of z && record.joists ? JOISTS_AT : []) {
      if (!z) continue;
      const middle = left + (right - left) * part;
      const half = Math.min(((z.high - z.low) * BREADTH) / 2, (right - left) * 0.1);
      items.push(...joistBox({ from: middle - half, upTo: middle + half }, z.low, z.high));
    }
    if (bottom > floor) items.push(level(bottom, CEILING));
  }
  items.push(level(floor, CEILING));
  return items;
}

/** A short bar at a height, in the beat of its service. */
export const bar = (z: number, left: number, right: number, style: LineStyle): Item => {
  const inset = (right - left) * 0.08;
  const pts: [Vec, Vec] = [
    [left + inset, z],
    [right - inset, z],
  ];
  return { t: 'line', pts, style };
};
