import { ceilingZ, floorZ, resolveHeight } from '../../geometry/heights.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';

/** A named height of the storey: where the work height catches, and what a tap sets it to. */
export interface Level {
  readonly key: string;
  readonly z: number;
  readonly word: string;
  readonly ref: HeightRef;
  /** Floor, ceiling and void edges are heavier than what merely stands at a height. */
  readonly heavy: boolean;
}

export interface VoidBand {
  readonly id: string;
  readonly name: string;
  readonly kind: string;
  readonly bottom: number;
  readonly top: number;
  readonly joistBottom: number | null;
  readonly joistDepthMm: number | null;
}

export interface StoreyHeights {
  readonly floor: number;
  readonly ceiling: number;
  readonly buildUpMm: number;
  readonly assumed: boolean;
  readonly levels: readonly Level[];
  readonly bands: readonly VoidBand[];
}

const mm = (from: HeightRef['from'], of: string): HeightRef => ({ from, of, mm: 0 });

function bandsOf(plan: Plan, storey: string): VoidBand[] {
  const found: VoidBand[] = [];
  for (const v of Object.values(plan.voids)) {
    if (v.storey !== storey || !v.bottom || !v.top) continue;
    const bottom = resolveHeight(plan, v.bottom);
    const top = resolveHeight(plan, v.top);
    if (!bottom || !top) continue;
    const timber = v.joists?.bottom ? resolveHeight(plan, v.joists.bottom) : undefined;
    found.push({
      id: v.id,
      name: v.name,
      kind: v.kind,
      bottom: bottom.z,
      top: top.z,
      joistBottom: timber?.z ?? (v.joists ? bottom.z : null),
      joistDepthMm: v.joists?.depthMm ?? null,
    });
  }
  return found;
}

/** Floor, ceiling, voids and their edges of a storey, highest first. Null where the storey is not there. */
export function storeyHeights(plan: Plan, storey: string): StoreyHeights | null {
  const record = plan.storeys[storey];
  const floor = floorZ(plan, storey);
  const ceiling = ceilingZ(plan, storey);
  if (!record || floor === undefined || ceiling === undefined) return null;
  const bands = bandsOf(plan, storey);
  const levels: Level[] = [
    { key: 'floor', z: floor, word: 'floor', ref: mm('floor', storey), heavy: true },
    { key: 'ceiling', z: ceiling, word: 'ceiling', ref: mm('ceiling', storey), heavy: true },
  ];
  for (const b of bands) {
    const name = b.name === '' ? b.kind : b.name;
    levels.push({
      key: `${b.id}-bottom`,
      z: b.bottom,
      word: `bottom of ${name}`,
      ref: mm('voidBottom', b.id),
      heavy: true,
    });
    levels.push({ key: `${b.id}-top`, z: b.top, word: `top of ${name}`, ref: mm('voidTop', b.id), heavy: true });
  }
  const unlike = levels.filter((l, i) => levels.findIndex((o) => Math.abs(o.z - l.z) < 1) === i);
  return {
    floor,
    ceiling,
    buildUpMm: record.buildUpMm,
    assumed: record.sureness === 'assumed',
    levels: unlike.sort((a, b) => b.z - a.z),
    bands,
  };
}

/** Where a height stands, in words: "over the floor 150", "top of Hall false ceiling", "2420". */
export function sayHeight(plan: Plan, ref: HeightRef): string {
  const off = Math.round(ref.mm);
  if (ref.from === 'floor') return `${off} off floor`;
  if (ref.from === 'ceiling')
    return off === 0 ? 'at the ceiling' : `${Math.abs(off)} ${off < 0 ? 'below' : 'over'} ceiling`;
  if (ref.from === 'voidTop' || ref.from === 'voidBottom') {
    const name = ref.of === null ? 'void' : plan.voids[ref.of]?.name || 'void';
    const edge = ref.from === 'voidTop' ? 'top' : 'bottom';
    return off === 0 ? `${edge} of ${name}` : `${Math.abs(off)} ${off < 0 ? 'below' : 'over'} ${edge} of ${name}`;
  }
  if (ref.from === 'connection') return 'height of the tail';
  return `${off} above datum`;
}
