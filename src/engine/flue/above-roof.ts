import { openingBox } from '../../geometry/opening-box.ts';
import { insideOutline } from '../../geometry/outlines.ts';
import { roofPlaneZ } from '../../geometry/roofs.ts';
import { outOfWall, wallHeights, wallLength } from '../../geometry/wall-frame.ts';
import type { Given } from '../given.ts';
import { midSentence, sayOpening, sayPoint, sayWall } from '../say-names.ts';
import { type Candidate, candidate, LOOKED_MM } from './candidate.ts';
import { gapOf, gapWithout } from './gaps.ts';
import { neighbourhood } from './neighbourhood.ts';
import { bodyOf, riseTo, type Terminal } from './terminals.ts';

const TABLE = 'flue-roof-distances' as const;

function roofs(given: Given, t: Terminal): Candidate[] {
  return Object.values(given.plan.roofs).flatMap((roof): Candidate[] => {
    const z = insideOutline(t.at, roof.outline) ? roofPlaneZ(given.plan, roof, t.at) : undefined;
    if (z === undefined) return [];
    const local = Math.min(t.local({ ...t.at, z }).z, t.body.minZ);
    const gap = gapOf(t.body, { ...t.body, minZ: local, maxZ: local }, riseTo(t, null));
    return [candidate({ table: TABLE, row: 'above-roof', ids: [], what: 'the roof', gap })];
  });
}

function openings(given: Given, t: Terminal): Candidate[] {
  const rise = riseTo(t, null);
  const walls = neighbourhood(given, t).openings.flatMap((o): Candidate[] => {
    const box =
      given.network.alive.has('openings', o.id) && o.kind !== 'archway' ? openingBox(given.plan, o.id) : undefined;
    if (!box || o.opens === false) return [];
    const gap = gapOf(
      t.body,
      t.round(
        box.footprint.flatMap((c) => [
          { ...c, z: box.bottomZ },
          { ...c, z: box.topZ },
        ]),
      ),
      rise,
    );
    const what = `the ${midSentence(sayOpening(given.plan, o.id))}`;
    const unless = o.opens === null ? `whether ${what} opens` : null;
    return [candidate({ table: TABLE, row: 'roof-opening', ids: [o.id], what, gap, unless })];
  });
  const points = neighbourhood(given, t).points.flatMap((p): Candidate[] => {
    if ((p.kind !== 'roof-window' && p.kind !== 'neighbour-window') || !given.network.alive.has('points', p.id))
      return [];
    const body = bodyOf(given, t, p);
    if (!body || p.fields.opens === false) return [];
    const what = `the ${midSentence(sayPoint(given.plan, p.id))}`;
    const unless = p.fields.opens === true ? null : `whether ${what} opens`;
    const gap = gapOf(t.body, body.box, body.rise);
    return [candidate({ table: TABLE, row: 'roof-opening', ids: [p.id], what, gap, unless })];
  });
  return [...walls, ...points];
}

function walls(given: Given, t: Terminal): Candidate[] {
  return neighbourhood(given, t).walls.flatMap((w): Candidate[] => {
    const heights = given.network.alive.has('walls', w.id) ? wallHeights(given.plan, w) : undefined;
    if (!heights || t.local({ ...t.at, z: heights.top }).z <= t.body.minZ) return [];
    const half = w.thicknessMm / 2;
    const ends = [0, wallLength(w)].flatMap((u) => [outOfWall(w, u, half), outOfWall(w, u, -half)]);
    const gap = gapWithout('Z', t.body, t.round(ends.map((c) => ({ ...c, z: t.at.z }))));
    const what = `the ${midSentence(sayWall(given.plan, w.id))}`;
    return [candidate({ table: TABLE, row: 'roof-wall', ids: [w.id], what, gap, shows: 'plan' })];
  });
}

/** Round a terminal that goes through the roof. */
export function aboveRoof(given: Given, t: Terminal, all: readonly Terminal[]): Candidate[] {
  const others = all.flatMap((o): Candidate[] => {
    const body = o.point.id === t.point.id ? undefined : bodyOf(given, t, o.point);
    if (!body) return [];
    const what = `the ${midSentence(sayPoint(given.plan, o.point.id))}`;
    return [
      candidate({
        table: TABLE,
        row: 'roof-terminal',
        ids: [o.point.id],
        what,
        gap: gapOf(t.body, body.box, body.rise),
      }),
    ];
  });
  return [...roofs(given, t), ...others, ...openings(given, t), ...walls(given, t)].filter(
    (c) => c.gap.mm <= LOOKED_MM,
  );
}
