import { services } from '../../catalogue/services.ts';
import { dot3, length3 } from '../../geometry/vec.ts';
import type { IdMaker } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Xyz } from '../../plan/records/parts.ts';
import type { Point } from '../../plan/records/pipework.ts';
import { COINCIDENT_MM } from '../../plan/units.ts';
import { type Changes, type Displaced, type Move, Refusal } from './changes.ts';
import { checkLegs } from './checks.ts';
import { collapse } from './collapse.ts';
import { axesFor, type Triple } from './frame.ts';
import { type Incidence, incidence } from './incidence.ts';
import { otherNode, type Pipework, pipework } from './law.ts';
import { settle } from './settle.ts';
import { solve } from './solve.ts';
import { carried, movedPoints, toldNodes } from './told.ts';
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

function optionOf(plan: Plan, move: Move): string | null | undefined {
  if ('point' in move) return plan.points[move.point]?.option;
  return 'leg' in move ? plan.legs[move.leg]?.option : plan.nodes[move.node]?.option;
}

/** Nodes that no move goes past: other connections, pipe that was there, whatever has no place. */
function staying(plan: Plan, at: Incidence, hold: boolean, { fixed }: DisplaceOptions) {
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

function follow(
  plan: Plan,
  after: Plan,
  told: ReadonlyMap<string, Xyz>,
  points: ReadonlyMap<string, Point>,
  stays: (node: string) => boolean,
  options: DisplaceOptions,
): Changes {
  const at = incidence(plan);
  const axes = axesFor(plan, at, [...told.keys()]);
  const pipes = pipework(plan, at, axes, options.runsDownhill ?? catalogueFalls);
  const along = new Map<string, Triple>([...told].map(([node, by]) => [node, axes.along(by)]));
  const held = (node: string): boolean => !along.has(node) && stays(node);
  const solved = solve({ pipes, told: along, stays: held, loose: looseLegs(pipes, told) });
  const settled = settle(pipes, solved, options.ids);
  checkLegs(pipes, settled);
  return writeChanges(pipes, after, settled, collapse(pipes, settled, held), points);
}

function answer(work: () => Changes): Displaced {
  try {
    return { ok: true, changes: work() };
  } catch (e) {
    if (e instanceof Refusal) return { ok: false, why: e.message };
    throw e;
  }
}

/**
 * Moves things and keeps their runs joined. A move along a leg changes its length, across it goes on to the next corner;
 * other connections and seen pipe that was there stay; what is left over becomes one jog in a run, or a refusal in words.
 * Falls keep their mm per m. Legs of no length go. Only what the move touches is looked at.
 */
export function displace(plan: Plan, moves: readonly Move[], options: DisplaceOptions): Displaced {
  return answer(() => {
    const at = incidence(plan);
    const hold = options.holdSeen ?? moves.some((m) => optionOf(plan, m) !== null);
    const stays = staying(plan, at, hold, options);
    const points = movedPoints(plan, moves);
    const after = points.size === 0 ? plan : { ...plan, points: { ...plan.points, ...Object.fromEntries(points) } };
    return follow(plan, after, toldNodes(plan, after, at, moves, stays), points, stays, options);
  });
}

/**
 * The same where walls, heights or points have been changed already: whatever hangs on them has moved, and its pipes are
 * to follow. The changes are to be made to `after`.
 */
export function followHosts(before: Plan, after: Plan, options: DisplaceOptions): Displaced {
  return answer(() => {
    const at = incidence(before);
    const told = carried(
      before,
      after,
      Object.values(after.nodes).filter((n) => n.id in before.nodes),
    );
    const stays = staying(before, at, options.holdSeen ?? true, options);
    return follow(before, after, told, new Map(), stays, options);
  });
}
