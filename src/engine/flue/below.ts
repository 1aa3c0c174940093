import { groundAt } from '../../geometry/ground.ts';
import { insideOutline } from '../../geometry/outlines.ts';
import { roofPlaneZ } from '../../geometry/roofs.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';
import { type Candidate, candidate } from './candidate.ts';
import { type Gap, gapOf, overlap } from './gaps.ts';
import { neighbourhood } from './neighbourhood.ts';
import { bodyOf, riseTo, type Terminal } from './terminals.ts';

const NEAR_MM = constant('drain-judgement', 'ground levelled within', 'mm');

const under = (t: Terminal, z: number): Gap =>
  gapOf(t.body, { ...t.body, minZ: z, maxZ: Math.min(z, t.body.minZ) }, riseTo(t, null));

/** The ground: by its levels, else as told for the terminal, which may have been read at its middle or its underside. */
function ground(given: Given, t: Terminal): Candidate[] {
  const mouth = t.house({ x: 0, y: t.body.maxY, z: 0 });
  const level = groundAt(given.plan, mouth);
  const near = { row: 'above-ground', ids: [], what: 'the ground' };
  if (level && level.awayMm <= NEAR_MM)
    return [candidate({ ...near, gap: under(t, t.local({ ...mouth, z: level.z }).z) })];
  const told = t.point.fields.aboveGroundMm;
  if (typeof told !== 'number') return [];
  const half = (t.body.maxZ - t.body.minZ) / 2;
  const gap = { ...under(t, t.body.minZ - Math.max(0, told - half)), lo: Math.max(0, told - half), hi: told };
  return [candidate({ ...near, gap })];
}

/** Roofs below that reach before the wall. A roof has no id a finding may carry. */
function roofs(given: Given, t: Terminal): Candidate[] {
  const mouth = t.house({ x: 0, y: t.body.maxY, z: 0 });
  return Object.values(given.plan.roofs).flatMap((roof): Candidate[] => {
    if (!insideOutline(mouth, roof.outline)) return [];
    const z = roofPlaneZ(given.plan, roof, mouth);
    const local = z === undefined ? undefined : t.local({ ...mouth, z }).z;
    if (local === undefined || local > t.body.maxZ) return [];
    return [candidate({ row: 'above-ground', ids: [], what: 'the roof below', gap: under(t, local) })];
  });
}

/** Balconies and car ports that are drawn, and lie below. */
function balconies(given: Given, t: Terminal): Candidate[] {
  return neighbourhood(given, t).points.flatMap((p): Candidate[] => {
    if (p.kind !== 'eaves' || !given.network.alive.has('points', p.id)) return [];
    const body = bodyOf(given, t, p);
    if (!body || body.box.maxZ > t.body.minZ || !overlap(t.body.minX, t.body.maxX, body.box.minX, body.box.maxX))
      return [];
    if (!overlap(t.body.minY, t.body.maxY, body.box.minY, body.box.maxY)) return [];
    const gap = gapOf(t.body, body.box, body.rise);
    return [
      candidate({ row: 'above-ground', ids: [p.id], what: `the ${midSentence(sayPoint(given.plan, p.id))}`, gap }),
    ];
  });
}

/** What lies beneath a terminal, nearest first. */
export function below(given: Given, t: Terminal): Candidate[] {
  return [...ground(given, t), ...roofs(given, t), ...balconies(given, t)].sort((a, b) => a.gap.mm - b.gap.mm);
}
