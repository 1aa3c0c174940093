import { services } from '../../catalogue/services.ts';
import { grow } from '../../geometry/boxes.ts';
import { alongLine, type Line3 } from '../../geometry/segments.ts';
import { add3, distance3, dot3, scale3, sub3, unit3 } from '../../geometry/vec.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import type { JoistMeeting } from './joist-cuts.ts';
import { byJoist } from './joist-reading.ts';
import type { VoidPart } from './void-parts.ts';

/** A cold pipe and a warm one side by side in one void: the nearest stretch of a pair of runs. */
export interface HeatBesideCold {
  readonly cold: VoidPart;
  readonly warm: VoidPart;
  /** Surface to surface on the level, lagging of the warm one included. */
  readonly apartMm: number;
  /** How far they run side by side. */
  readonly besideMm: number;
  readonly at: Xyz;
  readonly more: number;
}

const STRETCH_MM = constant('heat-beside-cold', 'stretch', 'mm');
const PARALLEL_DEG = constant('heat-beside-cold', 'parallel', 'degrees');

/** Two notches with less timber than this between them are one. */
const ONE_NOTCH_MM = constant('joist-judgement', 'notch room', 'mm');

const systemOf = (part: VoidPart): string | undefined => services.get(part.pipe.edge.service)?.system;
const isCold = (part: VoidPart): boolean => systemOf(part) === 'cold';
const isWarm = (part: VoidPart): boolean => systemOf(part) === 'hot' || systemOf(part) === 'heating';

function lineOf({ pipe, fromMm, toMm }: VoidPart): Line3 {
  const lengthMm = distance3(pipe.body.a, pipe.body.b);
  if (lengthMm === 0) return pipe.body;
  return { a: alongLine(pipe.body, fromMm / lengthMm), b: alongLine(pipe.body, toMm / lengthMm) };
}

/** Side by side: how far apart on the level at the nearest, and over what length. Null where they are not parallel and level. */
export function sideBySide(one: Line3, other: Line3): { apartMm: number; besideMm: number; at: Xyz } | null {
  const [d, e] = [unit3(sub3(one.b, one.a)), unit3(sub3(other.b, other.a))];
  const within = Math.cos((PARALLEL_DEG * Math.PI) / 180);
  const level = Math.sin((PARALLEL_DEG * Math.PI) / 180);
  if (Math.abs(dot3(d, e)) < within || Math.abs(d.z) > level) return null;
  const lengthMm = distance3(one.a, one.b);
  const s = [other.a, other.b].map((p) => dot3(sub3(p, one.a), d));
  const [lo, hi] = [Math.max(0, Math.min(...s)), Math.min(lengthMm, Math.max(...s))];
  if (hi <= lo) return null;
  const off = [lo, hi].map((t) => {
    const p = add3(one.a, scale3(d, t));
    const q = add3(other.a, scale3(e, dot3(sub3(p, other.a), e)));
    return { p, flat: Math.hypot(q.x - p.x, q.y - p.y) };
  });
  const near = off.reduce((a, b) => (b.flat < a.flat ? b : a));
  return { apartMm: near.flat, besideMm: hi - lo, at: add3(one.a, scale3(d, (lo + hi) / 2)) };
}

/** Warm parts of the same void near a cold one, by box first. */
function besides(
  given: Given,
  cold: VoidPart,
  byLeg: ReadonlyMap<string, VoidPart[]>,
  mostMm: number,
): HeatBesideCold[] {
  // Lagged cold is what is asked for where they cannot be parted.
  if (cold.pipe.edge.insulation !== null) return [];
  return given.pipeIndex.search(grow(cold.pipe.box, mostMm)).flatMap((near) =>
    (byLeg.get(near.edge.id) ?? []).flatMap((warm): HeatBesideCold[] => {
      if (warm.space.id !== cold.space.id) return [];
      if (cold.pipe.edge.state === 'there' && warm.pipe.edge.state === 'there') return [];
      given.counts.distances += 1;
      const found = sideBySide(lineOf(cold), lineOf(warm));
      if (!found || found.besideMm < STRETCH_MM) return [];
      const apartMm = Math.max(0, found.apartMm - cold.pipe.body.radiusMm - warm.pipe.body.radiusMm);
      return apartMm < mostMm ? [{ cold, warm, ...found, apartMm, more: 0 }] : [];
    }),
  );
}

/**
 * Cold runs that lie nearer than `mostMm` side by side with something warm in one void: for each its nearest stretch,
 * since lagging the cold one cures them all. Only pipes of one void are held against each other.
 */
export function findHeatBesideCold(given: Given, mostMm: number): HeatBesideCold[] {
  const byLeg = new Map<string, VoidPart[]>();
  for (const part of given.voidParts.filter(isWarm)) {
    byLeg.set(part.pipe.edge.id, [...(byLeg.get(part.pipe.edge.id) ?? []), part]);
  }
  const found = new Map<string, HeatBesideCold[]>();
  for (const cold of given.voidParts.filter(isCold)) {
    const key = `${cold.pipe.run}|${cold.space.id}`;
    const here = besides(given, cold, byLeg, mostMm);
    if (here.length > 0) found.set(key, [...(found.get(key) ?? []), ...here]);
  }
  return [...found.values()].flatMap((all) => {
    const worst = [...all].sort((a, b) => a.apartMm - b.apartMm || b.besideMm - a.besideMm)[0];
    return worst ? [{ ...worst, more: all.length - 1 }] : [];
  });
}

/** Cold and warm let into one notch of a joist: the cold one's meeting first. */
export function sharedNotches(given: Given): { readonly cold: JoistMeeting; readonly warm: JoistMeeting }[] {
  const system = (m: JoistMeeting): string | undefined => services.get(m.pipe.edge.service)?.system;
  const warm = (m: JoistMeeting): boolean => system(m) === 'hot' || system(m) === 'heating';
  const notched = given.joistMeetings.filter(
    (m) => m.reading !== null && m.reading !== 'lengthwise' && m.reading.as === 'top',
  );
  return byJoist(notched).flatMap((cuts) =>
    cuts.slice(1).flatMap((m, i) => {
      const before = cuts[i];
      if (!before || m.alongMm - before.alongMm >= ((m.odMm ?? 0) + (before.odMm ?? 0)) / 2 + ONE_NOTCH_MM) return [];
      if (system(m) === 'cold' && warm(before)) return [{ cold: m, warm: before }];
      return system(before) === 'cold' && warm(m) ? [{ cold: before, warm: m }] : [];
    }),
  );
}
