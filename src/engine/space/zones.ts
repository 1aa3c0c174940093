import { floorZ } from '../../geometry/heights.ts';
import { toLocal } from '../../geometry/point-box.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { type Sited, site, standing } from './sited.ts';

/** A bath or shower with the zones round it: how far out they reach from its edge (or its outlet), and how high. */
export interface Wet {
  readonly of: Sited;
  /** Zone 1 goes this far out of the edge of the bath or tray; where there is none, from the shower itself. */
  readonly outMm: number;
  readonly fromOutlet: boolean;
  readonly topZ: number;
  readonly floorZ: number;
}

const HEIGHT_MM = constant('bathroom-zones', 'height', 'mm');
const OUTLET_MM = constant('bathroom-zones', 'outlet', 'mm');
export const ZONE_2_MM = constant('bathroom-zones', 'zone 2', 'mm');

const wets = new WeakMap<Given, readonly Wet[]>();

/** Standing baths and showers that have a place. */
export function wetsOf(given: Given): readonly Wet[] {
  const known = wets.get(given);
  if (known) return known;
  const points = [...standing(given, 'bath'), ...standing(given, 'shower-tray')];
  const made = points.flatMap((point): Wet[] => {
    const of = site(given, point);
    const floor = of && floorZ(given.plan, of.room?.id ?? point.storey);
    if (!of || floor === undefined) return [];
    const fromOutlet = point.fields.level === true;
    const head = typeof point.fields.headMm === 'number' ? point.fields.headMm : 0;
    const topZ = floor + Math.max(HEIGHT_MM, head);
    return [{ of, outMm: fromOutlet ? OUTLET_MM : 0, fromOutlet, topZ, floorZ: floor }];
  });
  wets.set(given, made);
  return made;
}

const beyond = (v: number, lo: number, hi: number): number => Math.max(lo - v, 0, v - hi);

/** How far outside zone 1 a place lies in plan, mm; 0 in it. */
function fromZone1(wet: Wet, p: Xyz): number {
  const at = toLocal(wet.of.body.frame, p);
  const { minX, maxX, maxY } = wet.of.body.local;
  if (wet.fromOutlet) return Math.max(0, Math.hypot(at.x, at.y) - wet.outMm);
  return Math.hypot(beyond(at.x, minX, maxX), beyond(at.y, 0, maxY));
}

/**
 * The nearest of a thing's body to zone 1 in plan. A thing lies in the zones where its lowest part is below their top.
 * Its corners and the middles of its sides stand for it, which is near enough for boxes smaller than a zone.
 */
export function nearZone(wet: Wet, thing: Sited): { readonly mm: number; readonly low: boolean } {
  const corners = thing.body.footprint;
  const places = corners.flatMap((p, i) => {
    const q = corners[(i + 1) % corners.length] ?? p;
    return [p, { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2, z: p.z }];
  });
  const mm = Math.min(...places.map((p) => fromZone1(wet, p)));
  return { mm, low: thing.body.box.minZ < wet.topZ };
}
