import { pointKinds } from '../../catalogue/point-kinds.ts';
import { pointBox, segmentToPoint } from '../../geometry/point-box.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import type { Pipe } from '../clearance/pipes.ts';
import type { Given } from '../given.ts';
import { midSentence, sayPoint } from '../say-names.ts';

/** New pipe inside the body of a point; `gapMm` below zero by how far. */
export interface PointHit {
  readonly pipe: Pipe;
  readonly gapMm: number;
  readonly at: Xyz;
}

/** Standing points of some kinds with the new pipe that runs into them, deepest first. Points without a place are left out. */
export function pointsInTheWay(
  given: Given,
  kinds: ReadonlySet<string>,
): { point: Point; hits: readonly PointHit[] }[] {
  return Object.values(given.plan.points).flatMap((point) => {
    if (!kinds.has(point.kind) || !given.network.alive.has('points', point.id)) return [];
    const body = pointBox(given.plan, point);
    if (!body) return [];
    const hits = given.pipeIndex
      .search(body.box)
      .filter((pipe) => pipe.edge.state === 'new')
      .flatMap((pipe): PointHit[] => {
        given.counts.distances += 1;
        const found = segmentToPoint(pipe.body, body);
        const gapMm = found.distance - pipe.body.radiusMm;
        return gapMm < 0 ? [{ pipe, gapMm, at: found.onLine }] : [];
      })
      .sort((a, b) => a.gapMm - b.gapMm || (a.pipe.edge.id < b.pipe.edge.id ? -1 : 1));
    return hits.length > 0 ? [{ point, hits }] : [];
  });
}

/** What a point is called inside a sentence: its name, what was said of it, or its kind. */
export function sayThing(given: Given, point: Point): string {
  if (point.name !== '') return midSentence(point.name);
  const { what } = point.fields;
  const kind = pointKinds.get(point.kind);
  const choice = kind?.fields.find((f) => f.key === 'what')?.choices?.find((c) => c.value === what);
  if (choice) return choice.label.toLowerCase();
  if (typeof what === 'string' && what !== '') return midSentence(what);
  return kind ? midSentence(sayPoint(given.plan, point.id)) : 'point';
}
