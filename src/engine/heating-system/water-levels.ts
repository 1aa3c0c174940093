import { type Edge, otherEnd, type Vertex } from '../../network/network.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { type Levels, type Pocket, pocketsOf } from '../heating/pockets.ts';
import { heatingTails, isHeating, type WaterSystem } from './water-systems.ts';

/** Points that water and air go straight through and that have no vent or drain of their own. */
const THROUGH = new Set(['zone-valves', 'diverting-valve']);

const LEVEL_MM = constant('heating-judgement', 'level', 'mm');
const TRAP_MM = constant('heating-judgement', 'trap', 'mm');

export interface Trap {
  /** The run it is told on; new. */
  readonly run: string;
  readonly legs: readonly string[];
  /** Vertex in the middle of the level part. */
  readonly at: string;
  readonly depthMm: number;
  /** Litres between it and the lip. */
  readonly litres: number;
}

const heightOf = (v: Vertex): number | null => v.place?.at.z ?? null;
const has = (given: Given, v: Vertex, kind: string): boolean => v.items.some((i) => given.plan.items[i]?.kind === kind);

const heatingEdges = (given: Given, v: Vertex): Edge[] =>
  v.edges.flatMap((id) => {
    const e = given.network.edges.get(id);
    return e && isHeating(e) ? [e] : [];
  });

/**
 * Air and water get out, or go on where nobody sees, at an appliance, an end, a pipe that was not seen, and a place
 * without a height: what is not known is never called a trap.
 */
function opens(given: Given, v: Vertex, item: string): boolean {
  if (has(given, v, item)) return true;
  const point = v.point === null ? undefined : given.plan.points[v.point];
  if (point) return !THROUGH.has(point.kind);
  if (v.gone !== null || v.edges.length < 2) return true;
  return heatingEdges(given, v).some((e) => {
    const far = given.network.vertices.get(otherEnd(e, v.id));
    return e.kind === 'stretch' || far === undefined || heightOf(far) === null;
  });
}

function linksOf(given: Given, system: WaterSystem, through: (kind: string) => boolean): [string, string][] {
  const pipes = system.edges.map((e): [string, string] => [e.a, e.b]);
  const inside = system.points
    .filter((p) => through(p.kind))
    .flatMap((p) => {
      const tails = heatingTails(given, p).filter((t) => system.vertices.has(t));
      return tails.slice(1).map((t): [string, string] => [tails[0] ?? t, t]);
    });
  return [...pipes, ...inside];
}

export function levelsOf(
  given: Given,
  system: WaterSystem,
  how: {
    readonly turned: boolean;
    readonly through: (kind: string) => boolean;
    readonly opens: (v: Vertex) => boolean;
  },
): Levels {
  const height = new Map<string, number>();
  const outlets = new Set<string>();
  for (const v of system.vertices.values()) {
    const z = heightOf(v);
    if (z === null) continue;
    height.set(v.id, how.turned ? 0 - z : z);
    if (how.opens(v)) outlets.add(v.id);
  }
  return { height, links: linksOf(given, system, how.through), outlets };
}

/** Litres a metre of an edge holds; 0 where its size was not read. */
export type PerMetre = (edge: Edge) => number;

/** What the pipes of a pocket hold beyond its lip, litres: of a pipe that crosses the lip the part past it. */
export function litresPast(system: WaterSystem, levels: Levels, pocket: Pocket, per: PerMetre): number {
  const inside = new Set(pocket.places);
  let litres = 0;
  for (const e of system.edges) {
    if (!inside.has(e.a) && !inside.has(e.b)) continue;
    const [za, zb] = [levels.height.get(e.a), levels.height.get(e.b)];
    const mm = e.lengthMm.value ?? e.lengthMm.lo;
    if (za === undefined || zb === undefined) continue;
    const [low, high] = [Math.min(za, zb), Math.max(za, zb)];
    const part = high === low ? 1 : Math.max(0, Math.min(1, (high - pocket.lipMm) / (high - low)));
    litres += part * (mm / 1000) * per(e);
  }
  return litres;
}

function trapOf(given: Given, system: WaterSystem, levels: Levels, pocket: Pocket, per: PerMetre): Trap | null {
  const depthMm = pocket.topMm - pocket.lipMm;
  if (depthMm < TRAP_MM) return null;
  const level = pocket.places.filter((p) => pocket.topMm - (levels.height.get(p) ?? 0) <= LEVEL_MM).sort();
  const edges = level.flatMap((id) => {
    const v = system.vertices.get(id);
    return v ? heatingEdges(given, v).filter((e) => e.state === 'new' && e.kind === 'leg') : [];
  });
  const flat = new Set(level);
  const along = edges.filter((e) => flat.has(e.a) && flat.has(e.b));
  const first = along[0] ?? edges[0];
  if (!first) return null;
  return {
    run: first.run,
    legs: [...new Set((along.length > 0 ? along : edges).map((e) => e.id))].sort(),
    at: flat.has(first.a) ? first.a : first.b,
    depthMm,
    litres: litresPast(system, levels, pocket, per),
  };
}

function traps(given: Given, system: WaterSystem, turned: boolean, per: PerMetre): Trap[] {
  const levels = levelsOf(given, system, {
    turned,
    through: (kind) => THROUGH.has(kind),
    opens: (v) => opens(given, v, turned ? 'drain-cock' : 'air-vent'),
  });
  return pocketsOf(levels)
    .flatMap((p) => trapOf(given, system, levels, p, per) ?? [])
    .sort((a, b) => b.depthMm - a.depthMm || (a.at < b.at ? -1 : 1));
}

/** New pipe that holds air: it rises and falls again by more than a little, with no vent and nothing that lets air out. */
export const highTraps = (given: Given, system: WaterSystem, per: PerMetre): Trap[] => traps(given, system, false, per);

/** New pipe that holds water when the rest is empty: a dip without a drain cock. */
export const lowTraps = (given: Given, system: WaterSystem, per: PerMetre): Trap[] => traps(given, system, true, per);
