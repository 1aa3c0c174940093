import type { Plan } from '../../plan/plan.ts';
import type { PlanNode } from '../../plan/records/pipework.ts';
import type { Fragment, Spread, Wish } from '../display-list.ts';
import { remember } from '../memo/remember.ts';
import { type Bank, banksOf } from '../pipes/banks.ts';
import { type Crossing, crossings } from '../pipes/crossings.ts';
import { type DrawnLeg, vertexOf } from '../pipes/drawn-leg.ts';
import { type Joint, jointOf } from '../pipes/joints.ts';
import type { PipesInView } from '../pipes/pipes-in-view.ts';
import { type Plane, viewKey } from '../pipes/plane.ts';
import { risersOf } from '../pipes/risers.ts';
import { endSpread, jointSpread, type Shifts, spreadKey } from '../pipes/spread-of.ts';
import { wallProbe } from '../pipes/wall-probe.ts';
import { levelOf } from '../text/say-level.ts';
import { cornerMost, jointFragment } from './joint.fragment.ts';
import { legFragment } from './leg.fragment.ts';
import { riserFragment } from './riser.fragment.ts';

const NO_SHIFTS: Shifts = new Map();

/** "bank of 3 at 150, 210, 270", on the first leg of the bank, where its lines keep their heights. */
function bankWords(plan: Plan, banks: readonly Bank[], plane: Plane): Map<DrawnLeg, string> {
  const words = new Map<DrawnLeg, string>();
  for (const bank of banks) {
    if (bank.slots < 3) continue;
    const [first, ...rest] = bank.members;
    if (!first) continue;
    const longest = rest.reduce((a, b) => (b.upTo - b.from > a.upTo - a.from + 1 ? b : a), first);
    const along = bank.members.filter(
      (m) => Math.min(m.upTo, longest.upTo) - Math.max(m.from, longest.from) > (longest.upTo - longest.from) / 2,
    );
    const legs = along.flatMap((m) => m.legs);
    const spokesman = longest.legs[0];
    if (along.length < 3 || !spokesman || legs.some((leg) => Math.abs(leg.readerA - leg.readerB) > 1)) continue;
    const levels = [...new Set(legs.map((leg) => leg.readerA))].sort((a, b) => a - b);
    words.set(spokesman, `bank of ${along.length} at ${levels.map((z) => levelOf(plan, z, plane.storey)).join(', ')}`);
  }
  return words;
}

function gapsOf(found: readonly Crossing[], shifts: Shifts): { at: Crossing['at']; spread?: Spread }[] {
  return found.map(({ at, over }) => {
    const shift = shifts.get(over);
    return shift ? { at, spread: [shift] } : { at };
  });
}

const gapKey = (gaps: ReturnType<typeof gapsOf>): string =>
  gaps.map((g) => `${g.at[0].toFixed(1)},${g.at[1].toFixed(1)} ${spreadKey(g.spread)}`).join(';');

/** Fragments of legs, stretches, rises and the places where they meet, for either projection. */
export function pipeFragments(plan: Plan, plane: Plane, pipes: PipesInView): Fragment[] {
  const inPlan = plane.view.kind === 'plan';
  const key = viewKey(plane.view);
  const { banks, shifts } = inPlan ? banksOf(pipes, wallProbe(plan, plane.storey)) : { banks: [], shifts: NO_SHIFTS };
  const words = bankWords(plan, banks, plane);
  const behind = crossings(pipes.legs);
  const risers = risersOf(pipes.legs);
  const joints = new Map<string, Joint>();
  for (const [vertex, legs] of pipes.at) joints.set(vertex, jointOf(vertex, legs));

  const trimAt = (leg: DrawnLeg, vertex: string): number => {
    const joint = joints.get(vertex);
    const other = joint?.is === 'corner' ? joint.flat.find((l) => l !== leg) : undefined;
    return other ? cornerMost(leg, other) : 0;
  };
  const fragments: Fragment[] = [];
  for (const leg of pipes.legs) {
    if (leg.endOn) {
      const riser = risers.get(leg);
      if (riser?.owner !== leg) continue;
      const ends = [joints.get(riser.startVertex), joints.get(riser.endVertex)];
      const spread = jointSpread(ends[0], shifts) ?? jointSpread(ends[1], shifts);
      const sized = !ends.some((j) => j?.flat.some((l) => l.size === leg.size && l.run === leg.run));
      const leansOn = [key, ...riser.legs, spreadKey(spread), sized];
      fragments.push(
        remember(leg.record, `riser:${key}`, plan, leansOn, (traced) =>
          riserFragment(traced, riser, plane, spread, sized),
        ),
      );
      continue;
    }
    const spread = [
      endSpread(leg, joints.get(leg.vertexA), shifts),
      endSpread(leg, joints.get(leg.vertexB), shifts),
    ] as const;
    const trim = [trimAt(leg, leg.vertexA), trimAt(leg, leg.vertexB)] as const;
    const gaps = gapsOf(behind.get(leg) ?? [], shifts);
    const said = words.get(leg);
    const leansOn = [leg, spreadKey(spread[0]), spreadKey(spread[1]), trim[0], trim[1], gapKey(gaps), said];
    fragments.push(
      remember(leg.record, `leg:${key}`, plan, leansOn, () => {
        const at = [(leg.a[0] + leg.b[0]) / 2, (leg.a[1] + leg.b[1]) / 2] as const;
        const own = shifts.get(leg);
        const wish: Wish | undefined =
          said === undefined
            ? undefined
            : { w: 'flag', at, what: said, how: null, rank: 6, near: true, ...(own ? { spread: [own] } : {}) };
        return legFragment(leg, { spread, trim, gaps, wishes: wish ? [wish] : [] }, inPlan);
      }),
    );
  }
  const done = new Set<string>();
  for (const node of Object.values(plan.nodes)) {
    const fragment = nodeFragment(node, done, joints, shifts, plan, key);
    if (fragment) fragments.push(fragment);
  }
  return fragments;
}

function nodeFragment(
  node: PlanNode,
  done: Set<string>,
  joints: ReadonlyMap<string, Joint>,
  shifts: Shifts,
  plan: Plan,
  key: string,
): Fragment | undefined {
  const vertex = vertexOf(node);
  const joint = joints.get(vertex);
  if (!joint || done.has(vertex)) return undefined;
  done.add(vertex);
  if (joint.is === 'straight' || joint.is === 'end' || joint.is === 'none' || joint.is === 'riser') return undefined;
  const spread = jointSpread(joint, shifts);
  return remember(node, `joint:${key}`, plan, [joint.is, ...joint.flat, spreadKey(spread)], () =>
    jointFragment(node.id, vertex, joint, spread),
  );
}
