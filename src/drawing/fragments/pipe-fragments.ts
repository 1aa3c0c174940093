import type { Plan } from '../../plan/plan.ts';
import type { PlanNode } from '../../plan/records/pipework.ts';
import type { Fragment, Spread, Wish } from '../display-list.ts';
import { makeAnew, remember } from '../memo/remember.ts';
import { type Bank, banksOf, type WallProbe } from '../pipes/banks.ts';
import { type Crossing, crossings } from '../pipes/crossings.ts';
import { type DrawnLeg, vertexOf } from '../pipes/drawn-leg.ts';
import { type Joint, jointOf } from '../pipes/joints.ts';
import type { PipesInView } from '../pipes/pipes-in-view.ts';
import { type Plane, viewKey } from '../pipes/plane.ts';
import { riserRooms } from '../pipes/riser-rooms.ts';
import { type Riser, risersOf } from '../pipes/risers.ts';
import { endSpread, jointSpread, type Shifts, spreadKey } from '../pipes/spread-of.ts';
import type { VoidWords } from '../pipes/void-words.ts';
import { levelOf } from '../text/say-level.ts';
import { fallFragment } from './fall.fragment.ts';
import { cornerMost, jointFragment } from './joint.fragment.ts';
import { legFragment } from './leg.fragment.ts';
import { riserFragment } from './riser.fragment.ts';

const NO_SHIFTS: Shifts = new Map();

/** "bank of 3 at 150, 210, 270", once on the longest line of each bank whose lines keep their heights. */
function bankWords(plan: Plan, banks: readonly Bank[], plane: Plane): Map<DrawnLeg, string> {
  const said = new Map<string, DrawnLeg>();
  for (const bank of banks) {
    const [first, ...rest] = bank.members;
    if (!first) continue;
    const longest = rest.reduce((a, b) => (b.upTo - b.from > a.upTo - a.from + 1 ? b : a), first);
    const half = (longest.upTo - longest.from) / 2;
    const along = bank.members.filter((m) => Math.min(m.upTo, longest.upTo) - Math.max(m.from, longest.from) > half);
    const legs = along.flatMap((m) => m.legs);
    const spokesman = longest.legs[0];
    if (along.length < 3 || !spokesman || legs.some((leg) => Math.abs(leg.readerA - leg.readerB) > 1)) continue;
    const levels = [...new Set(legs.map((leg) => leg.readerA))].sort((a, b) => a - b);
    const words = `bank of ${along.length} at ${levels.map((z) => levelOf(plan, z, plane.storey)).join(', ')}`;
    const other = said.get(words);
    if (!other || spokesman.lengthMm > other.lengthMm) said.set(words, spokesman);
  }
  return new Map([...said].map(([words, leg]) => [leg, words]));
}

function gapsOf(found: readonly Crossing[], shifts: Shifts): { at: Crossing['at']; spread?: Spread }[] {
  return found.map(({ at, over }) => {
    const shift = shifts.get(over);
    return shift ? { at, spread: [shift] } : { at };
  });
}

const gapKey = (gaps: ReturnType<typeof gapsOf>): string =>
  gaps.map((g) => `${g.at[0].toFixed(1)},${g.at[1].toFixed(1)} ${spreadKey(g.spread)}`).join(';');

/** What all pipes of a view say about one of them. */
interface Surroundings {
  readonly plan: Plan;
  readonly plane: Plane;
  readonly key: string;
  readonly joints: ReadonlyMap<string, Joint>;
  readonly shifts: Shifts;
  readonly behind: ReadonlyMap<DrawnLeg, readonly Crossing[]>;
  /** Said of a bank by one of its legs. */
  readonly words: ReadonlyMap<DrawnLeg, string>;
  /** Said of a leg that runs in a void. */
  readonly inVoid: ReadonlyMap<DrawnLeg, string>;
  readonly keep: typeof remember;
}

function legFragments(leg: DrawnLeg, around: Surroundings): Fragment[] {
  const { plan, key, joints, shifts } = around;
  const trimAt = (vertex: string): number => {
    const joint = joints.get(vertex);
    const other = joint?.is === 'corner' ? joint.flat.find((l) => l !== leg) : undefined;
    return other ? cornerMost(leg, other) : 0;
  };
  const ends = [joints.get(leg.vertexA), joints.get(leg.vertexB)] as const;
  const spread = [endSpread(leg, ends[0], shifts), endSpread(leg, ends[1], shifts)] as const;
  const trim = [trimAt(leg.vertexA), trimAt(leg.vertexB)] as const;
  const gaps = gapsOf(around.behind.get(leg) ?? [], shifts);
  const said = [around.words.get(leg), around.inVoid.get(leg)].filter((text) => text !== undefined);
  const shift = shifts.get(leg);
  const own: Spread | undefined = shift && [shift];
  const leansOn = [leg, spreadKey(spread[0]), spreadKey(spread[1]), trim[0], trim[1], gapKey(gaps), said.join('; ')];
  return around.keep(leg.record, `leg:${key}`, plan, leansOn, () => {
    const at = [(leg.a[0] + leg.b[0]) / 2, (leg.a[1] + leg.b[1]) / 2] as const;
    const along = [leg.a, leg.b] as const;
    const told = said.map(
      (what): Wish => ({
        w: 'flag',
        at,
        what,
        how: null,
        rank: 6,
        along,
        clearMm: 0.6,
        ...(own ? { spread: own } : {}),
      }),
    );
    const fall = fallFragment(leg, own);
    return [legFragment(leg, { spread, trim, gaps, wishes: told }), ...(fall ? [fall] : [])];
  });
}

function risersFragment(
  leg: DrawnLeg,
  riser: Riser | undefined,
  around: Surroundings,
  roomMm: number | undefined,
): Fragment[] {
  if (riser?.owner !== leg) return [];
  const { plan, plane, key, joints, shifts } = around;
  const ends = [joints.get(riser.startVertex), joints.get(riser.endVertex)];
  const spread = jointSpread(ends[0], shifts) ?? jointSpread(ends[1], shifts);
  const sized = !ends.some((j) => j?.flat.some((l) => l.size === leg.size && l.run === leg.run));
  const leansOn = [...riser.legs, spreadKey(spread), sized, roomMm];
  return [
    around.keep(leg.record, `riser:${key}`, plan, leansOn, (traced) =>
      riserFragment(traced, riser, plane, spread, sized, roomMm),
    ),
  ];
}

/** One for each place where legs meet, drawn by the first node that lies there. */
function jointFragments({ plan, key, joints, shifts, keep }: Surroundings, legs: readonly DrawnLeg[]): Fragment[] {
  const done = new Set<string>();
  return legs.flatMap(({ record }) =>
    [record.a, record.b].flatMap((id) => {
      const node = plan.nodes[id];
      if (!node) return [];
      const vertex = vertexOf(node);
      const joint = joints.get(vertex);
      if (!joint || done.has(vertex) || !isMarked(joint, node)) return [];
      done.add(vertex);
      const spread = jointSpread(joint, shifts);
      const made = keep(node, `joint:${key}`, plan, [joint.is, ...joint.flat, spreadKey(spread)], () =>
        jointFragment(node.id, vertex, joint, spread),
      );
      return made ? [made] : [];
    }),
  );
}

const isMarked = (joint: Joint, node: PlanNode): boolean =>
  joint.is === 'corner' ||
  joint.is === 'tee' ||
  joint.is === 'reducer' ||
  (joint.is === 'end' && node.place.on === 'storey');

export interface PipeDrawing {
  readonly fragments: readonly Fragment[];
  /** How a place where pipes meet moves when its bank is spread: what stands there moves along. */
  spreadAt(vertex: string): Spread | undefined;
}

/** What pipes are drawn on: made once for all clusters of a view. */
export interface Ground {
  readonly wall: WallProbe;
  readonly voids: VoidWords;
}

/** In a gesture only some pipes are drawn, among those that stay, and nothing is kept. */
export interface Moving {
  readonly legs: ReadonlySet<DrawnLeg>;
}

/** Fragments of legs, stretches, rises and the places where they meet, for either projection. */
export function pipeFragments(
  plan: Plan,
  plane: Plane,
  pipes: PipesInView,
  ground: Ground,
  moving?: Moving,
): PipeDrawing {
  const inPlan = plane.view.kind === 'plan';
  const { banks, shifts } = inPlan ? banksOf(pipes, ground.wall) : { banks: [], shifts: NO_SHIFTS };
  const joints = new Map<string, Joint>();
  for (const [vertex, legs] of pipes.at) joints.set(vertex, jointOf(vertex, legs));
  const around: Surroundings = {
    plan,
    plane,
    key: viewKey(plane.view),
    joints,
    shifts,
    behind: crossings(pipes.legs),
    words: moving ? new Map() : bankWords(plan, banks, plane),
    inVoid: inPlan ? ground.voids(pipes.legs) : new Map(),
    keep: moving ? makeAnew : remember,
  };
  const legs = moving ? pipes.legs.filter((leg) => moving.legs.has(leg)) : pipes.legs;
  const risers = risersOf(pipes.legs);
  const rooms = riserRooms(risers.values());
  const lines = legs.flatMap((leg) =>
    leg.endOn ? risersFragment(leg, risers.get(leg), around, rooms.get(leg)) : legFragments(leg, around),
  );
  return {
    fragments: [...lines, ...jointFragments(around, legs)],
    spreadAt: (vertex) => jointSpread(joints.get(vertex), shifts),
  };
}
