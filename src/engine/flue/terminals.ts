import type { Box3 } from '../../geometry/boxes.ts';
import { boxOf } from '../../geometry/boxes.ts';
import { riseBetween } from '../../geometry/heights.ts';
import type { Frame } from '../../geometry/hosting.ts';
import { toHouse } from '../../geometry/hosting.ts';
import { pointBox, toLocal } from '../../geometry/point-box.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { LEVEL, type Rise } from './gaps.ts';

/** Where a flue ends, in its own frame: x along the wall, y out of it, z up from its underside. */
export interface Terminal {
  readonly point: Point;
  readonly appliance: Point | null;
  readonly upright: boolean;
  /** Drawn for this option: only then is it held against distances. */
  readonly isNew: boolean;
  readonly frame: Frame;
  readonly body: Box3;
  /** Middle of it in the house. */
  readonly at: Xyz;
  local(p: Xyz): Xyz;
  house(p: Xyz): Xyz;
  /** Box round some places of the house, in this frame: exact where they lie square to the wall, never too small. */
  round(places: readonly Xyz[]): Box3;
}

const SERVES_MM = constant('flue-judgement', 'serves within', 'mm');
const HEATS = new Set(['boiler', 'gas-fire']);

const nameOf = (p: Point): string => p.name.trim().toLowerCase();

/** The appliance a drawn flue leads to; else the one it is said to serve; else the nearest of its own state beside it. */
function applianceOf(given: Given, point: Point, at: Xyz, led: ReadonlyMap<string, string>): Point | null {
  const { plan, network } = given;
  const drawn = plan.points[led.get(point.id) ?? ''];
  if (drawn) return drawn;
  const all = Object.values(plan.points).filter((p) => HEATS.has(p.kind) && network.alive.has('points', p.id));
  const told = typeof point.fields.serves === 'string' ? point.fields.serves.trim().toLowerCase() : '';
  const named = told === '' ? undefined : all.find((p) => nameOf(p) === told);
  if (named) return named;
  const near = all.flatMap((p) => {
    const body = p.kind === 'boiler' && (p.option === null) === (point.option === null) ? pointBox(plan, p) : undefined;
    const away = body ? Math.hypot(body.frame.origin.x - at.x, body.frame.origin.y - at.y) : SERVES_MM;
    return away < SERVES_MM ? [{ p, away }] : [];
  });
  return near.sort((a, b) => a.away - b.away || (a.p.id < b.p.id ? -1 : 1))[0]?.p ?? null;
}

/** Terminal to appliance along a drawn flue. */
function ledTo(given: Given): ReadonlyMap<string, string> {
  const trace = given.traces.find((t) => t.circuit === 'flue');
  const found = new Map<string, string>();
  for (const end of trace?.ends ?? []) {
    const first = trace?.pathTo(end.vertex)[0]?.from;
    const source = trace?.sources.find((s) => s.vertex === first);
    if (source) found.set(end.point, source.point);
  }
  return found;
}

const known = new WeakMap<Given, readonly Terminal[]>();

/** Every terminal that stands in the case, by id. Those without a place are left out. */
export function terminalsOf(given: Given): readonly Terminal[] {
  const before = known.get(given);
  if (before) return before;
  const { plan, network } = given;
  const points = Object.values(plan.points).filter(
    (p) => p.kind === 'flue-terminal' && network.alive.has('points', p.id),
  );
  const led = points.length === 0 ? new Map<string, string>() : ledTo(given);
  const made = points
    .sort((a, b) => (a.id < b.id ? -1 : 1))
    .flatMap((point): Terminal[] => {
      const placed = pointBox(plan, point);
      if (!placed) return [];
      const { frame, local: body } = placed;
      const at = toHouse(frame, { x: 0, y: body.maxY / 2, z: body.maxZ / 2 });
      const local = (p: Xyz) => toLocal(frame, p);
      return [
        {
          point,
          appliance: applianceOf(given, point, at, led),
          upright: point.fields.way === 'vertical',
          isNew: point.option !== null && network.alive.case.when === 'after',
          frame,
          body,
          at,
          local,
          house: (p) => toHouse(frame, p),
          round: (places) => boxOf(places.map(local)),
        },
      ];
    });
  known.set(given, made);
  return made;
}

/** How far a thing with its own doubtful height may lie off its drawn place, seen from the terminal. */
export function riseTo(t: Terminal, frame: Frame | null): Rise {
  const own = { z: t.frame.origin.z, lo: t.frame.zLo, hi: t.frame.zHi, doubts: t.frame.doubts };
  const z = own.z;
  const far = frame
    ? { z: frame.origin.z, lo: frame.zLo, hi: frame.zHi, doubts: frame.doubts }
    : { z, lo: z, hi: z, doubts: new Map() };
  const { mm, lo, hi } = riseBetween(own, far);
  return lo === mm && hi === mm ? LEVEL : { lo: lo - mm, hi: hi - mm };
}

/** A point's body in the terminal's frame. Undefined where it has no place. */
export function bodyOf(given: Given, t: Terminal, p: Point): { box: Box3; rise: Rise; out: Xyz } | undefined {
  const body = pointBox(given.plan, p);
  if (!body) return undefined;
  const top = body.footprint.map((c) => ({ ...c, z: c.z + p.size.heightMm }));
  const { out } = body.frame;
  return {
    box: t.round([...body.footprint, ...top]),
    rise: riseTo(t, body.frame),
    out: {
      x: out.x * t.frame.right.x + out.y * t.frame.right.y,
      y: out.x * t.frame.out.x + out.y * t.frame.out.y,
      z: 0,
    },
  };
}
