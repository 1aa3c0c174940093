import { ceilingZ } from '../../geometry/heights.ts';
import { pointBox } from '../../geometry/point-box.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import { between, exact, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { total } from '../heating/spread.ts';
import { growth, type Pressures, pressures, vesselByTable, vesselSize } from '../heating/vessel.ts';
import { designTemps } from './design-temps.ts';
import { type WaterContent, waterContents } from './water-content.ts';
import { heatingTails, type WaterSystem } from './water-systems.ts';

export interface VesselCheck {
  readonly content: WaterContent;
  /** Metres from the vessel up to the highest water. */
  readonly staticM: Quantity;
  readonly highest: string;
  readonly pressures: Pressures;
  readonly coldC: number;
  readonly hotC: number;
  /** Part of the cold volume. */
  readonly grows: number | null;
  /** Litres by the form and by the older table; null where it has no answer. */
  readonly wanted: Quantity | null;
  readonly byTable: Quantity | null;
  /** Litres there are; no upper end where one of them is not told. */
  readonly there: Quantity;
  readonly vessels: readonly Point[];
  readonly verdict: 'pass' | 'small' | 'cantTell';
  readonly missing: readonly string[];
}

const isVessel = (p: Point): boolean => p.kind === 'expansion-vessel';
const litresOf = (p: Point): Quantity => {
  const told = isVessel(p) ? p.fields.litres : p.fields.vesselLitres;
  return typeof told === 'number'
    ? exact(told, 'litres', 1, 'page')
    : { ...exact(0, 'litres', 1, 'page'), hi: null, value: null };
};

const tailZ = (given: Given, p: Point): number[] =>
  heatingTails(given, p).flatMap((t) => given.network.vertices.get(t)?.place?.at.z ?? []);

/** Highest and lowest it can be from the drawing: what was not drawn may go up to the ceiling of the top storey. */
function staticHead(given: Given, system: WaterSystem, at: Point | undefined) {
  const gauge = at ? Math.min(...tailZ(given, at)) : Number.POSITIVE_INFINITY;
  let top = Number.NEGATIVE_INFINITY;
  let highest = 'pipe';
  const rise = (z: number, what: string): void => {
    if (z > top) [top, highest] = [z, what];
  };
  for (const v of system.vertices.values()) if (v.place) rise(v.place.at.z, 'pipe');
  for (const p of system.points) {
    if (p.kind !== 'radiator') continue;
    const box = pointBox(given.plan, p);
    if (box) rise(box.box.maxZ, 'radiator');
  }
  const above = (z: number): number => Math.max(0, z - gauge) / 1000;
  const lo = Number.isFinite(gauge) && Number.isFinite(top) ? above(top) : 0;
  const unseen =
    system.edges.some((e) => e.kind === 'stretch') ||
    system.points.some((p) => p.kind === 'old-tails' || p.kind === 'join-point');
  const ceilings = Object.keys(given.plan.storeys).flatMap((s) => ceilingZ(given.plan, s) ?? []);
  const hi = unseen && Number.isFinite(gauge) ? Math.max(lo, ...ceilings.map(above)) : lo;
  return { staticM: between(lo, hi, 'm', 1, unseen ? 'practice' : 'derived', hi === lo ? lo : null), highest };
}

function verdictOf(wanted: Quantity | null, there: Quantity): VesselCheck['verdict'] {
  if (wanted === null) return 'cantTell';
  if (wanted.hi !== null && there.lo >= wanted.hi) return 'pass';
  return there.hi !== null && there.hi < wanted.lo ? 'small' : 'cantTell';
}

function checkOf(given: Given, content: WaterContent): VesselCheck {
  const { system, litres } = content;
  const drawn = system.points.filter(isVessel);
  const vessels = [...drawn, ...system.boilers];
  const { staticM, highest } = staticHead(given, system, vessels[0]);
  const p = pressures(staticM, null);
  const coldC = constant('heating-water-basis', 'filled', 'c');
  const hotC = Math.max(designTemps(given.plan).flowC, constant('heating-water-basis', 'hottest', 'c'));
  const grows = growth(coldC, hotC);
  const wanted = grows === null ? null : vesselSize(litres, grows, p);
  const there = total(vessels.map(litresOf), 'litres', 1);
  const untold = vessels.filter((v) => litresOf(v).hi === null);
  const verdict = verdictOf(wanted, there);
  const missing = [
    ...(untold.length > 0
      ? [untold.every(isVessel) ? 'the litres of the vessel' : 'the vessel built into the boiler']
      : []),
    ...content.missing,
  ];
  return {
    content,
    staticM,
    highest,
    pressures: p,
    coldC,
    hotC,
    grows,
    wanted,
    byTable: vesselByTable(litres, p.chargeBar),
    there,
    vessels,
    verdict,
    missing,
  };
}

const checks = new WeakMap<Given, readonly VesselCheck[]>();

/** Room for what the water grows by, for each system with a boiler. */
export function vesselChecks(given: Given): readonly VesselCheck[] {
  const found = checks.get(given);
  if (found) return found;
  const made = waterContents(given)
    .filter((c) => c.system.boilers.length > 0)
    .map((c) => checkOf(given, c));
  checks.set(given, made);
  return made;
}
