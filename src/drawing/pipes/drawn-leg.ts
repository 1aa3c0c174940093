import { services } from '../../catalogue/services.ts';
import { nodePlace, type Place } from '../../geometry/places.ts';
import { odMm, sayTube } from '../../network/tube-sizes.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Leg, PlanNode, Stretch } from '../../plan/records/pipework.ts';
import type { LineStyle, Vec } from '../display-list.ts';
import { remember } from '../memo/remember.ts';
import { legStyle, type PipeState } from './leg-style.ts';
import { type Plane, viewKey } from './plane.ts';

/** A leg or stretch as it lies in a view: the same object while nothing that it leans on has changed. */
export interface DrawnLeg {
  readonly map: 'legs' | 'stretches';
  readonly record: Leg | Stretch;
  readonly run: string;
  readonly serviceKey: string;
  readonly style: LineStyle;
  readonly state: PipeState;
  /** "G 28", or the words for what is not known. */
  readonly tag: string;
  /** "G", "HF": the service alone. */
  readonly letters: string;
  readonly unknown: boolean;
  readonly size: string;
  readonly radiusMm: number;
  readonly runsDownhill: boolean;
  readonly a: Vec;
  readonly b: Vec;
  readonly placeA: Place;
  readonly placeB: Place;
  readonly readerA: number;
  readonly readerB: number;
  readonly lengthMm: number;
  /** Points at the reader, or nearly: drawn as a mark. */
  readonly endOn: boolean;
  readonly vertexA: string;
  readonly vertexB: string;
}

/** Shorter than this in the view, a leg is seen from its end. */
const END_ON_MM = 0.5;

export const vertexOf = (node: PlanNode): string =>
  node.place.on === 'connection' ? `${node.place.point}/${node.place.connection}` : node.id;

const metres = (mm: number): string => (Math.round(mm / 100) / 10).toString();

function words(pipe: Leg | Stretch, tag: string): string {
  if (!('lengthMm' in pipe)) return pipe.tube.size === null ? `${tag} ?` : `${tag} ${sayTube(pipe.tube)}`;
  const { lo, hi } = pipe.lengthMm;
  const size = pipe.tube.size === null ? '?' : sayTube(pipe.tube);
  const comma = pipe.tube.size === null ? '' : ',';
  return `${tag} ${size}${comma} ${lo === hi ? metres(lo) : `${metres(lo)} to ${metres(hi)}`} m`;
}

/** As `drawnLeg`, and not kept: for what is in the middle of a gesture. */
export function drawnLegNow(
  plan: Plan,
  map: DrawnLeg['map'],
  pipe: Leg | Stretch,
  state: PipeState,
  plane: Pick<Plane, 'at' | 'toReader'>,
): DrawnLeg | null {
  const nodeA = plan.nodes[pipe.a];
  const nodeB = plan.nodes[pipe.b];
  const run = plan.runs[pipe.run];
  const placeA = nodeA && nodePlace(plan, nodeA);
  const placeB = nodeB && nodePlace(plan, nodeB);
  if (!nodeA || !nodeB || !run || !placeA || !placeB) return null;
  const kind = services.get(run.service);
  const service = kind?.style ?? run.service;
  const a = plane.at(placeA.at);
  const b = plane.at(placeB.at);
  const lengthMm = Math.hypot(a[0] - b[0], a[1] - b[1]);
  const unseen = map === 'stretches';
  const hollow = unseen || ('sureness' in pipe && pipe.sureness === 'assumed');
  return {
    map,
    record: pipe,
    run: run.id,
    serviceKey: run.service,
    style: legStyle(service, state, hollow, unseen),
    state,
    tag: words(pipe, kind?.tag ?? run.service),
    letters: kind?.tag ?? run.service,
    unknown: unseen || pipe.tube.size === null,
    size: sayTube(pipe.tube),
    radiusMm: (odMm(pipe.tube) ?? 0) / 2,
    runsDownhill: kind?.runsDownhill ?? false,
    a,
    b,
    placeA,
    placeB,
    readerA: plane.toReader(placeA.at),
    readerB: plane.toReader(placeB.at),
    lengthMm,
    endOn: lengthMm < END_ON_MM,
    vertexA: vertexOf(nodeA),
    vertexB: vertexOf(nodeB),
  };
}

/** Null where an end has no place: a leg that leans on something gone is not drawn. */
export function drawnLeg(
  plan: Plan,
  map: DrawnLeg['map'],
  pipe: Leg | Stretch,
  state: PipeState,
  plane: Plane,
): DrawnLeg | null {
  return remember(pipe, `drawn:${viewKey(plane.view)}`, plan, [state, ...planeKey(plane)], (traced) =>
    drawnLegNow(traced, map, pipe, state, plane),
  );
}

/** A face's plane is made from its wall, so a leg drawn on it leans on where the face is. */
function planeKey(plane: Plane): readonly unknown[] {
  if (plane.view.kind === 'plan') return [];
  const places = [
    { x: 0, y: 0, z: 0 },
    { x: 1, y: 0, z: 0 },
    { x: 0, y: 1, z: 0 },
  ];
  return places.flatMap((p) => [plane.at(p)[0], plane.toReader(p)]);
}
