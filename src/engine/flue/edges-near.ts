import type { Box3 } from '../../geometry/boxes.ts';
import { resolveHeight } from '../../geometry/heights.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';
import { type Candidate, candidate, LOOKED_MM, NEAR_FACE_MM } from './candidate.ts';
import { apart, gapOf, gapWithout, LEVEL, overlap } from './gaps.ts';
import { neighbourhood } from './neighbourhood.ts';
import { bodyOf, type Terminal } from './terminals.ts';

/** Does it lie before the wall the terminal comes out of, near enough to belong to it? */
const byFace = (t: Terminal, box: Box3): boolean =>
  box.maxY > 0 && apart(t.body.minY, t.body.maxY, box.minY, box.maxY) <= NEAR_FACE_MM;

const BESIDE_MM = constant('flue-distances', 'beside-terminal', 'mm');

const overhead: Readonly<Record<string, string>> = { balcony: 'below-balcony', carPort: 'below-balcony' };

function ofEdge(given: Given, t: Terminal, p: Point): Candidate[] {
  const body = bodyOf(given, t, p);
  if (!body || !byFace(t, body.box)) return [];
  const what = `the ${midSentence(sayPoint(given.plan, p.id))}`;
  const row = p.kind === 'gutter' ? 'below-gutter' : (overhead[String(p.fields.what)] ?? 'below-eaves');
  // What is beneath the terminal is a surface to stand off from, told with the ground.
  if (body.box.maxZ <= t.body.minZ && p.kind === 'eaves') return [];
  const gap = gapWithout('Y', t.body, body.box, body.rise);
  return gap.mm > LOOKED_MM ? [] : [candidate({ row, ids: [p.id], what, gap })];
}

/** An upright pipe goes on above and below what was drawn of it: only how far it is to the side counts. */
function ofPipe(given: Given, t: Terminal, p: Point): Candidate[] {
  const body = bodyOf(given, t, p);
  if (!body || !byFace(t, body.box)) return [];
  if (p.kind === 'soil-stack' && p.fields.outside === false) return [];
  const far = { ...body.box, minZ: t.body.minZ, maxZ: t.body.maxZ };
  const gap = gapWithout('Y', t.body, far);
  const what = `the ${midSentence(sayPoint(given.plan, p.id))}`;
  return gap.mm > LOOKED_MM ? [] : [candidate({ row: 'beside-pipe', ids: [p.id], what, gap })];
}

/** Eaves of roofs that were typed without the eaves being drawn: at their line, along the whole of it. */
function ofRoofs(given: Given, t: Terminal): Candidate[] {
  return Object.values(given.plan.roofs).flatMap((roof): Candidate[] => {
    const z = resolveHeight(given.plan, roof.eaves.height);
    if (!z) return [];
    const { a, b } = roof.eaves;
    const box = t.round([
      { ...a, z: z.z },
      { ...b, z: z.z },
    ]);
    if (box.maxY - box.minY > NEAR_FACE_MM || Math.abs(box.minY) > NEAR_FACE_MM) return [];
    if (box.maxZ <= t.body.minZ || !overlap(t.body.minX, t.body.maxX, box.minX, box.maxX)) return [];
    const gap = gapWithout('Y', t.body, box, { lo: z.lo - z.z, hi: z.hi - z.z });
    return gap.mm > LOOKED_MM ? [] : [candidate({ row: 'below-eaves', ids: [], what: 'the eaves of the roof', gap })];
  });
}

/** Car ports over a terminal: openings under one into the building want their own, greater distance. */
export function underCarPort(given: Given, t: Terminal, openings: readonly Candidate[]): Candidate[] {
  const ports = neighbourhood(given, t).points.filter(
    (p) => p.kind === 'eaves' && p.fields.what === 'carPort' && given.network.alive.has('points', p.id),
  );
  return ports.flatMap((p) => {
    const body = bodyOf(given, t, p);
    if (!body || body.box.minZ < t.body.minZ || !overlap(t.body.minX, t.body.maxX, body.box.minX, body.box.maxX))
      return [];
    return openings
      .filter((o) => o.table === 'flue-distances' && o.row !== 'frame')
      .filter((o) => o.gap.to.x >= body.box.minX && o.gap.to.x <= body.box.maxX && o.gap.to.z <= body.box.minZ)
      .map((o) => ({ ...o, row: 'car-port-opening', ids: [...o.ids, p.id] }));
  });
}

const OF: Readonly<Record<string, (given: Given, t: Terminal, p: Point) => Candidate[]>> = {
  gutter: ofEdge,
  eaves: ofEdge,
  'rainwater-pipe': ofPipe,
  'soil-stack': ofPipe,
};

/** Gutters, eaves, balconies and upright pipes on the terminal's own face. */
export function edgesNear(given: Given, t: Terminal): Candidate[] {
  const drawn = neighbourhood(given, t).points.flatMap((p) =>
    given.network.alive.has('points', p.id) ? (OF[p.kind]?.(given, t, p) ?? []) : [],
  );
  const eaves = drawn.some((c) => c.row === 'below-eaves') ? [] : ofRoofs(given, t);
  return [...drawn, ...eaves];
}

/** Other terminals: above one another, side by side, or facing. */
export function terminalsNear(given: Given, t: Terminal, all: readonly Terminal[]): Candidate[] {
  return all.flatMap((other): Candidate[] => {
    if (other.point.id === t.point.id || other.upright) return [];
    const body = bodyOf(given, t, other.point);
    if (!body) return [];
    const near = { ids: [other.point.id], what: `the ${midSentence(sayPoint(given.plan, other.point.id))}` };
    if (body.out.y > Math.SQRT1_2 && byFace(t, body.box)) {
      const gap = gapWithout('Y', t.body, body.box, body.rise);
      if (gap.mm > LOOKED_MM) return [];
      const side = gapWithout('Y', t.body, { ...body.box, minZ: t.body.minZ, maxZ: t.body.maxZ }, LEVEL);
      const one = candidate({ row: 'beside-terminal', ...near, gap });
      const upright = !overlap(t.body.minZ, t.body.maxZ, body.box.minZ, body.box.maxZ);
      return [upright && side.mm < BESIDE_MM ? { ...one, row: 'upright-terminal' } : one];
    }
    if (body.out.y > -Math.SQRT1_2 || body.box.minY < t.body.maxY) return [];
    const gap = gapOf(t.body, body.box, body.rise);
    return gap.mm > LOOKED_MM ? [] : [candidate({ row: 'facing-terminal', ...near, gap, shows: 'plan' })];
  });
}
