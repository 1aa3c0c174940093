import { services } from '../../catalogue/services.ts';
import { dot3, length3 } from '../../geometry/vec.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { type Changes, type Displaced, Refusal } from './changes.ts';
import { checkLegs } from './checks.ts';
import { collapse } from './collapse.ts';
import { type AxisIndex, axesFor, type Triple } from './frame.ts';
import { type Incidence, incidence } from './incidence.ts';
import { otherNode, type Pipework, pipework } from './law.ts';
import { settle } from './settle.ts';
import { oldThrough } from './slide.ts';
import { solve } from './solve.ts';
import type { Told } from './told.ts';
import { writeChanges } from './write-changes.ts';

export interface DisplaceOptions {
  /** For the nodes and legs of a jog. */
  readonly ids: IdMaker;
  /**
   * Does surveyed pipe that was seen stay where it is? Left out: yes, unless everything that is moved was surveyed too,
   * as when the survey is put right.
   */
  readonly holdSeen?: boolean;
  /** More nodes that stay. */
  readonly fixed?: ReadonlySet<string>;
  readonly runsDownhill?: (service: string) => boolean;
}

const catalogueFalls = (service: string): boolean => services.get(service)?.runsDownhill ?? false;

/** Cosine above which pipe that was there lies along an axis. */
const ALONG = 0.999;

/** Nodes that no move goes past: other connections, pipe that was there, whatever has no place. */
export function staying(plan: Plan, at: Incidence, hold: boolean, { fixed }: DisplaceOptions) {
  return (id: string): boolean => {
    const node = plan.nodes[id];
    if (!node || node.place.on === 'connection' || fixed?.has(id)) return true;
    if (!hold) return false;
    const seen = at.legsAt(id).some((l) => l.option === null && l.sureness === 'seen');
    return seen || at.stretchesAt(id).some((s) => s.option === null);
  };
}

/** A slanting leg whose end is moved along it takes the move up, as a straight one does. */
function looseLegs(pipes: Pipework, told: ReadonlyMap<string, Xyz>): Set<string> {
  const loose = new Set<string>();
  for (const [node, by] of told) {
    for (const leg of pipes.at.legsAt(node)) {
      const law = pipes.law(leg);
      if (!law || law.axis !== null || law.lengthMm <= COINCIDENT_MM || told.has(otherNode(leg, node))) continue;
      const way = pipes.axes.house(law.v);
      const share = Math.abs(dot3(way, by)) / law.lengthMm;
      const aside = Math.sqrt(Math.max(0, length3(by) ** 2 - share ** 2));
      if (aside <= COINCIDENT_MM && share > 0) loose.add(leg.id);
    }
  }
  return loose;
}

/** Carries out told moves; `after` is the plan with its moved points already in it. Throws a Refusal. */
export function follow(
  plan: Plan,
  after: Plan,
  { told, carried }: Told,
  points: ReadonlyMap<string, Point>,
  stays: (node: string) => boolean,
  options: DisplaceOptions,
): Changes {
  const at = incidence(plan);
  const canSlide = (node: string): boolean => plan.nodes[node]?.place.on === 'storey' && !options.fixed?.has(node);
  const axes = axesFor(plan, at, [...told.keys(), ...carried.keys()]);
  const pipes = pipework(plan, at, axes, options.runsDownhill ?? catalogueFalls);
  const along = new Map<string, Triple>([...told].map(([node, by]) => [node, axes.along(by)]));
  const held = (node: string): boolean => !along.has(node) && stays(node);
  const heldAlong = (node: string, axis: AxisIndex): boolean => {
    if (!held(node)) return false;
    const way = canSlide(node) ? oldThrough(plan, at, node) : undefined;
    return way === undefined || Math.abs(axes.along(way)[axis]) < ALONG;
  };
  const solved = solve({ pipes, told: along, carried, stays: heldAlong, loose: looseLegs(pipes, told) });
  const moved = new Map(solved.moved);
  // A corner that does not follow what its height is measured from is to be measured anew.
  for (const node of carried.keys()) if (!moved.has(node)) moved.set(node, [0, 0, 0]);
  const settled = settle(pipes, { ...solved, moved }, options.ids);
  checkLegs(pipes, settled);
  return writeChanges(pipes, after, settled, collapse(pipes, settled, held), points);
}

export function answer(work: () => Changes): Displaced {
  try {
    return { ok: true, changes: work() };
  } catch (e) {
    if (e instanceof Refusal) return { ok: false, why: e.message };
    throw e;
  }
}
