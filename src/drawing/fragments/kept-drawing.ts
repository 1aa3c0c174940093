import type { Alive } from '../../network/cases.ts';
import type { Plan } from '../../plan/plan.ts';
import { type Fragment, PAINTER_GROUPS, type PainterGroup } from '../display-list.ts';
import { faceFragments } from '../face/face-fragments.ts';
import { changedIn, PipesAtNodes, pipeOf, ranksOf } from '../pipes/changed-pipes.ts';
import { type Cluster, Clusters } from '../pipes/clusters.ts';
import type { DrawnLeg } from '../pipes/drawn-leg.ts';
import { nodesLeaningOn } from '../pipes/leaning-on.ts';
import { pipeInView } from '../pipes/pipes-in-view.ts';
import { type FacePlane, type Plane, turnOf } from '../pipes/plane.ts';
import { voidWords } from '../pipes/void-words.ts';
import { wallProbe } from '../pipes/wall-probe.ts';
import { itemFragments, itemsByNode } from './item-fragments.ts';
import { type Ground, pipeFragments } from './pipe-fragments.ts';
import { planFragments } from './plan-fragments.ts';
import { turnedProbe } from './turned.ts';

/** A view to be drawn: everything but the plan. */
export interface Looked {
  readonly plane: Plane;
  readonly alive: Alive;
  readonly stripped: boolean;
}

type Layers = ReadonlyMap<PainterGroup, readonly Fragment[]>;

/** The drawing of a view of one plan, and what it takes to go on from there to the next. */
export interface KeptDrawing {
  readonly plan: Plan;
  readonly fragments: readonly Fragment[];
  /** Drawn pipes by where they are. */
  readonly clusters: Clusters;
  readonly nodes: PipesAtNodes;
  readonly ranks: ReadonlyMap<string, number>;
  readonly parts: ReadonlyMap<Cluster, Layers>;
  readonly building: Layers;
}

/** Any pipe may be drawn otherwise when one of these changes; and only then a building, or when a point does. */
const ROUND_ABOUT = ['storeys', 'rooms', 'walls', 'voids', 'options'] as const;
const BUILDING = [...ROUND_ABOUT, 'openings', 'roofs', 'grounds', 'points', 'blobRefs'] as const;
const PIPEWORK = ['legs', 'stretches', 'nodes', 'runs', 'items'] as const;

const same = (a: Plan, b: Plan, maps: readonly (keyof Plan)[]): boolean => maps.every((m) => a[m] === b[m]);

function layered(fragments: readonly Fragment[]): Layers {
  const found = new Map<PainterGroup, Fragment[]>();
  for (const fragment of fragments) {
    const layer = found.get(fragment.layer);
    if (layer) layer.push(fragment);
    else found.set(fragment.layer, [fragment]);
  }
  return found;
}

const isFace = (plane: Plane): plane is FacePlane => plane.view.kind === 'face';

function buildingOf(plan: Plan, { plane, alive, stripped }: Looked): Layers {
  return layered(
    isFace(plane)
      ? faceFragments(plan, plane, alive, stripped)
      : planFragments(plan, plane.storey, alive, stripped, turnOf(plane.view)),
  );
}

/** Pipes that may be drawn otherwise: those that changed, and those that end or lean where something changed. */
function dirtyPipes(was: KeptDrawing, plan: Plan): Set<string> {
  const before = was.plan;
  const dirty = new Set<string>();
  for (const map of ['legs', 'stretches'] as const) {
    for (const id of changedIn(before, plan, map)) {
      const [old, now] = [before[map][id], plan[map][id]];
      if (old) was.nodes.remove(old);
      if (now) was.nodes.add(now);
      dirty.add(id);
    }
  }
  const moved = changedIn(before, plan, 'nodes');
  const points = changedIn(before, plan, 'points');
  if (points.length > 0) moved.push(...nodesLeaningOn(before, plan, new Set(points)));
  for (const node of moved) for (const id of was.nodes.at(node)) dirty.add(id);
  const runs = new Set(changedIn(before, plan, 'runs'));
  if (runs.size > 0) {
    for (const map of ['legs', 'stretches'] as const) {
      for (const id in plan[map]) if (runs.has(plan[map][id]?.run ?? '')) dirty.add(id);
    }
  }
  return dirty;
}

/** Does a void take its height from a point, where points changed? */
const movesVoids = (before: Plan, plan: Plan): boolean =>
  before.points !== plan.points &&
  Object.values(plan.voids).some((v) => [v.top, v.bottom].some((h) => h?.from === 'connection'));

/** Nodes at which something in line came, went or changed. */
function nodesOfItems(before: Plan, plan: Plan): string[] {
  return changedIn(before, plan, 'items').flatMap((id) =>
    [before.items[id], plan.items[id]].flatMap((item) => (item ? [item.node] : [])),
  );
}

function ordered(
  building: Layers,
  parts: ReadonlyMap<Cluster, Layers>,
  ranks: ReadonlyMap<string, number>,
): Fragment[] {
  const rank = (cluster: Cluster): number => ranks.get(cluster.legs[0]?.record.id ?? '') ?? 0;
  const layers = [...parts]
    .map(([cluster, of]) => ({ of, rank: rank(cluster) }))
    .sort((p, q) => p.rank - q.rank)
    .map(({ of }) => of);
  const all: Fragment[] = [];
  for (const group of PAINTER_GROUPS) {
    for (const of of [building, ...layers]) {
      const found = of.get(group);
      if (found) for (const fragment of found) all.push(fragment);
    }
  }
  return all;
}

/** The drawing of a plan, carried on from that of another plan in the same view and case, if there is one. */
export function drawAgain(was: KeptDrawing | undefined, plan: Plan, looked: Looked): KeptDrawing {
  if (was && same(was.plan, plan, [...BUILDING, ...PIPEWORK])) return { ...was, plan };
  const { plane, alive, stripped } = looked;
  const from = was && same(was.plan, plan, ROUND_ABOUT) && !movesVoids(was.plan, plan) ? was : undefined;
  const nodes = from?.nodes ?? new PipesAtNodes();
  const clusters = from?.clusters ?? new Clusters();
  const all = [...Object.keys(plan.stretches), ...Object.keys(plan.legs)];
  if (!from) for (const id of all) nodes.add(pipeOf(plan, id) as NonNullable<ReturnType<typeof pipeOf>>);
  const drawn = new Map<string, DrawnLeg | null>();
  for (const id of from ? dirtyPipes(from, plan) : all) {
    const pipe = pipeOf(plan, id);
    drawn.set(id, pipe ? pipeInView(plan, pipe, plane, alive, stripped) : null);
  }
  const kept = from && same(from.plan, plan, ['legs', 'stretches']);
  const ranks = kept ? from.ranks : ranksOf(plan);
  clusters.change(drawn, ranks);

  const stale = new Set<Cluster | undefined>();
  if (from) {
    for (const node of nodesOfItems(from.plan, plan)) for (const id of nodes.at(node)) stale.add(clusters.of(id));
  }
  const wall = turnedProbe(wallProbe(plan, plane.storey), turnOf(plane.view));
  const ground: Ground = { wall, voids: voidWords(plan, plane.storey, alive) };
  const items = itemsByNode(plan);
  const parts = new Map<Cluster, Layers>();
  for (const cluster of clusters.all()) {
    const before = stale.has(cluster) ? undefined : from?.parts.get(cluster);
    parts.set(cluster, before ?? partsOf(cluster));
  }
  function partsOf(cluster: Cluster): Layers {
    const pipes = pipeFragments(plan, plane, cluster, ground);
    const inLine = itemFragments(plan, plane, cluster, items, alive, stripped, pipes.spreadAt);
    return layered([...pipes.fragments, ...inLine]);
  }
  const building = from && same(from.plan, plan, BUILDING) ? from.building : buildingOf(plan, looked);
  return { plan, clusters, nodes, ranks, parts, building, fragments: ordered(building, parts, ranks) };
}
