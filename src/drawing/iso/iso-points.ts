import { pointBox } from '../../geometry/point-box.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { AreaItem, Fragment, Vec } from '../display-list.ts';
import { makeFragment } from '../fragments/fragment.ts';
import { pointEdge } from '../fragments/point.fragment.ts';
import type { PipeState } from '../pipes/leg-style.ts';
import type { IsoPlane } from './iso-plane.ts';

const up = (p: Xyz, by: number): Xyz => ({ ...p, z: p.z + by });

/** What pipes end at, as a plain box with its name: the sides that face the reader. Undefined where it has no place. */
export function isoPoint(plan: Plan, point: Point, state: PipeState, plane: IsoPlane): Fragment | undefined {
  const body = pointBox(plan, point);
  if (!body) return undefined;
  const high = point.size.heightMm;
  const edge = pointEdge(point, state);
  const at = (p: Xyz): Vec => plane.at(p);
  const side = (ring: readonly Vec[]): AreaItem => ({ t: 'area', rings: [ring], fill: 'paper', edge });
  const corners = body.footprint;
  const sides = corners.flatMap((p, i): AreaItem[] => {
    const q = corners[(i + 1) % corners.length] ?? p;
    const ring = [at(p), at(q), at(up(q, high)), at(up(p, high))];
    return facesReader(corners, p, q, plane) ? [side(ring)] : [];
  });
  const top = corners.map((p) => at(up(p, high)));
  const [cx, cy] = [0, 1].map((i) => top.reduce((sum, p) => sum + (p[i] ?? 0), 0) / top.length) as [number, number];
  return makeFragment(
    point.id,
    'points',
    'point',
    [...sides, side(top)],
    [{ w: 'flag', at: [cx, cy], what: point.name, how: null, rank: 1 }],
  );
}

/** A side of a body faces the reader where its middle is nearer than the middle of the body. */
function facesReader(corners: readonly Xyz[], p: Xyz, q: Xyz, plane: IsoPlane): boolean {
  const middle = corners.reduce((sum, c) => sum + plane.toReader(c), 0) / corners.length;
  return (plane.toReader(p) + plane.toReader(q)) / 2 > middle + 1e-6;
}
