import type { Box3 } from '../../geometry/boxes.ts';
import { openingBox } from '../../geometry/opening-box.ts';
import { roomAt } from '../../geometry/rooms.ts';
import type { Standing } from '../../geometry/wall-frame.ts';
import type { Opening } from '../../plan/records/building.ts';
import type { Xy, Xyz } from '../../plan/records/parts.ts';
import { standingBuilding } from '../clearance/crossings.ts';
import type { Given } from '../given.ts';
import { midSentence, sayOpening, sayPoint } from '../say-names.ts';
import { type Candidate, candidate, FACED_MM, LOOKED_MM, type Near, ON_FACE_MM } from './candidate.ts';
import { gapOf, gapWithout, overlap, type Rise } from './gaps.ts';
import { neighbourhood } from './neighbourhood.ts';
import { bodyOf, riseTo, type Terminal } from './terminals.ts';

/** An opening to the outside as the terminal sees it. `out`: the way it looks, in the terminal's frame. */
interface Seen {
  readonly ids: readonly string[];
  readonly what: string;
  readonly box: Box3;
  readonly rise: Rise;
  readonly out: Xy;
  /** Null: nobody told. False: only its frame counts. */
  readonly opens: boolean | null;
  readonly neighbour: boolean;
}

/** More than this of the one way and it looks that way: within 45 degrees. */
const SAME_WAY = Math.SQRT1_2;
const BEFORE_MM = 50;

interface Side {
  readonly edge: readonly [Xyz, Xyz];
  readonly out: Xy;
}

/** The sides of an opening that look outdoors: outer edge and way. Both, where no room is closed; none between rooms. */
function outerSides(given: Given, o: Opening, standing: Standing): Side[] {
  const box = openingBox(given.plan, o.id);
  const storey = given.plan.walls[o.wall]?.storey;
  if (!box || storey === undefined) return [];
  const [a, b, c, d] = box.footprint;
  const thick = Math.hypot(a.x - d.x, a.y - d.y) || 1;
  const left = { x: (a.x - d.x) / thick, y: (a.y - d.y) / thick };
  const sides = [
    { edge: [a, b] as const, out: left },
    { edge: [d, c] as const, out: { x: -left.x, y: -left.y } },
  ];
  const outdoors = sides.filter(({ edge: [p, q], out }) => {
    const before = { x: (p.x + q.x) / 2 + out.x * BEFORE_MM, y: (p.y + q.y) / 2 + out.y * BEFORE_MM };
    return roomAt(given.plan, storey, before, standing) === undefined;
  });
  return outdoors.map(({ edge: [p, q], out }) => ({
    edge: [
      { ...p, z: box.bottomZ },
      { ...q, z: box.topZ },
    ],
    out,
  }));
}

const outsides = new WeakMap<Given, Map<string, readonly Side[]>>();

/** The outer sides of an opening, looked up once for all terminals. */
function sidesOf(given: Given, opening: Opening): readonly Side[] {
  const known = outsides.get(given) ?? new Map<string, readonly Side[]>();
  outsides.set(given, known);
  const sides = known.get(opening.id) ?? outerSides(given, opening, standingBuilding(given.network));
  known.set(opening.id, sides);
  return sides;
}

function ofBuilding(given: Given, t: Terminal): Seen[] {
  const rise = riseTo(t, null);
  const { right, out } = t.frame;
  const outside = neighbourhood(given, t).openings.flatMap((opening) =>
    sidesOf(given, opening).map((side) => ({ opening, ...side })),
  );
  return outside.map(({ opening, edge, out: way }) => ({
    ids: [opening.id],
    what: `the ${midSentence(sayOpening(given.plan, opening.id))}`,
    box: t.round(edge),
    rise,
    out: { x: way.x * right.x + way.y * right.y, y: way.x * out.x + way.y * out.y },
    opens: opening.kind === 'vent' || opening.kind === 'archway' ? true : opening.opens,
    neighbour: false,
  }));
}

function ofPoints(given: Given, t: Terminal): Seen[] {
  return neighbourhood(given, t).points.flatMap((p): Seen[] => {
    if (p.kind !== 'neighbour-window' || !given.network.alive.has('points', p.id)) return [];
    const body = bodyOf(given, t, p);
    if (!body) return [];
    const { opens } = p.fields;
    return [
      {
        ids: [p.id],
        what: `the ${midSentence(sayPoint(given.plan, p.id))}`,
        box: body.box,
        rise: body.rise,
        out: body.out,
        opens: typeof opens === 'boolean' ? opens : null,
        neighbour: p.fields.whose !== 'ours',
      },
    ];
  });
}

/** Only its frame counts where it is fixed; not told, and it could open. */
function held(seen: Seen, row: string): Pick<Near, 'row' | 'unless'> {
  if (seen.opens === false) return { row: 'frame', unless: null };
  return { row, unless: seen.opens === null ? `whether ${seen.what} opens` : null };
}

function onFace(t: Terminal, seen: Seen): Candidate[] {
  const gap = gapWithout('Y', t.body, seen.box, seen.rise);
  const over = overlap(t.body.minX, t.body.maxX, seen.box.minX, seen.box.maxX);
  const row =
    over && seen.box.minZ >= t.body.maxZ
      ? 'below-opening'
      : over && seen.box.maxZ <= t.body.minZ
        ? 'above-opening'
        : 'beside-opening';
  return gap.mm > LOOKED_MM ? [] : [candidate({ ids: seen.ids, what: seen.what, gap, ...held(seen, row) })];
}

function faced(t: Terminal, seen: Seen): Candidate[] {
  const gap = gapOf(t.body, seen.box, seen.rise);
  if (gap.mm > FACED_MM) return [];
  const opposite =
    overlap(t.body.minX, t.body.maxX, seen.box.minX, seen.box.maxX) &&
    overlap(t.body.minZ, t.body.maxZ, seen.box.minZ + seen.rise.lo, seen.box.maxZ + seen.rise.hi);
  const near = { ids: seen.ids, what: seen.what, gap, shows: 'plan' as const };
  const danger = candidate({ ...near, row: 'facing-surface' });
  // A fixed light takes no plume in; nobody told, and it is taken to open.
  if (seen.opens === false) return [danger];
  const plume = opposite ? [candidate({ ...near, table: 'flue-plume', row: 'plume-opening' })] : [];
  const nuisance = seen.neighbour ? [candidate({ ...near, table: 'flue-plume', row: 'plume-neighbour' })] : [];
  return [danger, ...plume, ...nuisance];
}

/** Openings of this building and of others: on the same face, faced, or through a corner. */
export function openingsNear(given: Given, t: Terminal): Candidate[] {
  return [...ofBuilding(given, t), ...ofPoints(given, t)].flatMap((seen): Candidate[] => {
    const inFace = Math.abs(seen.box.minY) <= ON_FACE_MM && seen.out.y > SAME_WAY;
    if (inFace) return onFace(t, seen);
    if (seen.out.y < -SAME_WAY) return seen.box.minY > t.body.maxY ? faced(t, seen) : [];
    if (seen.out.y > SAME_WAY) return [];
    const gap = gapOf(t.body, seen.box, seen.rise);
    if (gap.mm > LOOKED_MM) return [];
    const near = { ids: seen.ids, what: seen.what, gap, shows: 'plan' as const, roundCorner: seen.box.minY < 0 };
    return [candidate({ ...near, ...held(seen, 'beside-opening') })];
  });
}
