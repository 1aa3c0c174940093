import { toHouse } from '../../geometry/hosting.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { exact, type Quantity } from '../../report/quantity.ts';
import type { Given } from '../given.ts';
import { alongPipe } from './along-pipe.ts';
import { facesOf, isNewPoint, type Sited, site, standing } from './sited.ts';

export type BondedService = 'gas' | 'water';

/** What is known of the main bonding where gas or water comes in. */
export interface Bond {
  readonly service: BondedService;
  /** Meter or stop tap. */
  readonly source: Point;
  readonly clamp: Point | null;
  /** This job joins new pipe there, or cuts some off. */
  readonly touched: boolean;
  readonly told: 'missing' | 'notNeeded' | null;
  /** Cross-section of the copper, mm2. */
  readonly conductor: Quantity | null;
  /** Along the pipe, mm. */
  readonly along: Quantity | null;
  readonly from: 'outlet' | 'entry';
  readonly beforeBranch: boolean | null;
}

const SOURCES = [
  ['gas', 'gas-meter'],
  ['water', 'stop-tap'],
] as const;

function touchedBy(given: Given, source: Point): boolean {
  const { vertices, edges } = given.network;
  if (isNewPoint(given, source)) return true;
  return source.connections.some((c) => {
    const v = vertices.get(`${source.id}/${c.id}`);
    return v !== undefined && (v.capped || v.edges.some((e) => edges.get(e)?.state === 'new'));
  });
}

const middleOf = ({ point, body }: Sited): Xyz =>
  toHouse(body.frame, { x: 0, y: point.size.depthMm / 2, z: point.size.heightMm / 2 });

/** Told on the clamp, else read on the day and noted for it. */
function conductorOf({ plan }: Given, clamp: Point): Quantity | null {
  const { conductorMm2 } = clamp.fields;
  if (typeof conductorMm2 === 'number') return exact(conductorMm2, 'mm2', 0, 'page');
  const read = plan.job.readings?.findLast((r) => r.point === clamp.id && r.unit === 'mm2');
  return typeof read?.value === 'number' ? exact(read.value, 'mm2', 0, 'page') : null;
}

function bondOf(given: Given, service: BondedService, source: Sited, clamp: Sited | null): Bond {
  const { point, face } = source;
  const { mainBonding: bonding } = point.fields;
  const told: Bond['told'] = bonding === 'missing' || bonding === 'notNeeded' ? bonding : null;
  const none = { service, source: point, touched: touchedBy(given, point), told };
  if (!clamp) return { ...none, clamp: null, conductor: null, along: null, from: 'outlet', beforeBranch: null };
  const outside = face === null && facesOf(given, point.storey).length > 0;
  const ways = point.connections.flatMap((c) => alongPipe(given, `${point.id}/${c.id}`, clamp.body, outside) ?? []);
  const [way] = ways;
  const { fromMeterMm, beforeBranch } = clamp.point.fields;
  // Where the outlet is outside a figure from it is the longer one: what counts begins at the wall.
  const measured = typeof fromMeterMm === 'number' && (way === undefined || way.from === 'outlet');
  return {
    ...none,
    clamp: clamp.point,
    conductor: conductorOf(given, clamp.point),
    along: measured ? exact(fromMeterMm, 'mm', 0, 'page') : (way?.mm ?? null),
    from: measured ? 'outlet' : (way?.from ?? 'outlet'),
    beforeBranch: typeof beforeBranch === 'boolean' ? beforeBranch : (way?.beforeBranch ?? null),
  };
}

const known = new WeakMap<Given, readonly Bond[]>();

/** Main bonding of each meter and stop tap; a clamp belongs to the nearest of its own service. */
export function bondsOf(given: Given): readonly Bond[] {
  const kept = known.get(given);
  if (kept) return kept;
  const clamps = standing(given, 'bonding-clamp').flatMap((p) => site(given, p) ?? []);
  const made = SOURCES.flatMap(([service, kind]) => {
    const sources = standing(given, kind).flatMap((p) => site(given, p) ?? []);
    const own = new Map<string, { clamp: Sited; mm: number }>();
    for (const clamp of clamps.filter((c) => c.point.fields.pipe === service)) {
      const at = middleOf(clamp);
      const far = (s: Sited): number => {
        const to = middleOf(s);
        return Math.hypot(to.x - at.x, to.y - at.y, to.z - at.z);
      };
      const [nearest] = sources.map((s) => ({ s, mm: far(s) })).sort((a, b) => a.mm - b.mm);
      const before = nearest && own.get(nearest.s.point.id);
      if (nearest && (!before || nearest.mm < before.mm)) own.set(nearest.s.point.id, { clamp, mm: nearest.mm });
    }
    return sources.map((s) => bondOf(given, service, s, own.get(s.point.id)?.clamp ?? null));
  });
  known.set(given, made);
  return made;
}
