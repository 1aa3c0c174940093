import { type PipeGaps, pipeGaps } from '../../catalogue/pipe-gaps.ts';
import { services } from '../../catalogue/services.ts';
import { type LaidLeg, levelStretch } from '../../drawing/ribbon/level-stretch.ts';
import { outerRadius, type Passing, passingPipes, sayClear } from '../../drawing/ribbon/passing.ts';
import type { RibbonBar } from '../../drawing/ribbon/ribbon-bars.ts';
import type { RibbonLevel } from '../../drawing/ribbon.ts';
import type { Editor, Outcome } from '../../editor/editor-api.ts';
import { type Moved, movedPlan } from '../../editor/moving/moved-plan.ts';
import { nodePlace } from '../../geometry/places.ts';
import type { Network } from '../../network/network.ts';
import { countingIds } from '../../plan/ids.ts';
import type { Plan } from '../../plan/plan.ts';
import type { HeightRef } from '../../plan/records/parts.ts';

/** A level stretch of pipe that is taken hold of by its height, with all that its height is judged by. */
export interface HeldRun {
  readonly bar: RibbonBar;
  readonly radius: number;
  readonly floor: number;
  readonly pieces: readonly LaidLeg[];
  /** Legs that change height with it: its own stretch, and whatever is banked with it. */
  readonly moving: ReadonlySet<string>;
  readonly passing: readonly Passing[];
  readonly gas: boolean;
  readonly gaps: PipeGaps;
  readonly levels: readonly RibbonLevel[];
}

/** Where it would go: `height` where it is a place of the house, so that it follows a new measurement. */
export interface Aim {
  readonly z: number;
  readonly height: HeightRef | null;
  /** What was caught, in words; null where nothing was. */
  readonly caught: string | null;
}

const isGas = (service: string): boolean => services.get(service)?.system === 'gas';

const STEP_MM = 10;
const TRIAL_MM = 10;
const STILL_MM = 0.5;

const shownIds = () => {
  const ids = countingIds(new Set(), 1);
  return { next: (prefix: string) => ids.next(`shown-${prefix}`) };
};

/** The plan with the stretch higher by so much, everything joined to it, or why that cannot be. */
export const raisedPlan = (plan: Plan, leg: string, by: number): Moved =>
  movedPlan(plan, [{ leg, by: { x: 0, y: 0, z: by } }], shownIds());

const heightOf = (plan: Plan, node: string | undefined): number | undefined => {
  const record = node === undefined ? undefined : plan.nodes[node];
  return record && nodePlace(plan, record)?.at.z;
};

function goAlong(plan: Plan, moved: Moved): Set<string> {
  const along = new Set<string>();
  if (!moved.ok) return along;
  for (const id of moved.touched) {
    const leg = plan.legs[id];
    if (!leg || !moved.plan.legs[id]) continue;
    const both = [leg.a, leg.b].every((n) => {
      const [was, is] = [heightOf(plan, n), heightOf(moved.plan, n)];
      return was !== undefined && is !== undefined && Math.abs(is - was) > STILL_MM;
    });
    if (both) along.add(id);
  }
  return along;
}

export function holdRun(
  plan: Plan,
  network: Network,
  bar: RibbonBar,
  levels: readonly RibbonLevel[],
  floor: number,
): HeldRun | null {
  const leg = plan.legs[bar.leg];
  if (!leg) return null;
  const stretch = levelStretch(plan, bar.leg);
  const moving = goAlong(plan, raisedPlan(plan, bar.leg, TRIAL_MM));
  for (const { leg: own } of stretch) moving.add(own.id);
  return {
    bar,
    radius: outerRadius(leg),
    floor,
    pieces: stretch,
    moving,
    passing: passingPipes(plan, network, stretch, moving),
    gas: isGas(plan.runs[leg.run]?.service ?? ''),
    gaps: pipeGaps(plan.basis.editions),
    levels,
  };
}

/** A pipe rests on a floor with its underside, and against a ceiling with its top. */
function atLevel({ radius }: HeldRun, level: RibbonLevel): Aim {
  const { height, label, z } = level;
  const up = height.from === 'floor' || height.from === 'voidBottom' ? 1 : -1;
  const isFace = height.mm === 0 && height.from !== 'connection' && height.from !== 'datum';
  if (!isFace) return { z, height, caught: label };
  const off = Math.round(radius) * up;
  const word = height.from === 'floor' || height.from === 'ceiling' ? `the ${label}` : label.replace(/^under /, '');
  const caught = height.from === 'voidBottom' ? `on the bottom of ${word}` : up > 0 ? `on ${word}` : `against ${word}`;
  return { z: z + off, height: { ...height, mm: off }, caught };
}

/** How a height is called that leaves just the room that is asked for. */
export const JUST_CLEAR = 'just clear';

/** Just over and just under a pipe that passes, with the room that is asked for between the two, in whole mm off the floor. */
function justClear({ radius, floor, gas, gaps }: HeldRun, p: Passing): Aim[] {
  const gap = (gas !== isGas(p.service) ? gaps.gas : gaps.crossing) ?? gaps.crossing ?? 0;
  const by = gap > 0 ? `, by ${gap}` : '';
  const over = Math.ceil(p.high + gap + radius - floor) + floor;
  const under = Math.floor(p.low - gap - radius - floor) + floor;
  return [
    { z: over, height: null, caught: `${JUST_CLEAR} over the ${p.name}${by}` },
    { z: under, height: null, caught: `${JUST_CLEAR} under the ${p.name}${by}` },
  ];
}

/** Where a hand at the height `z` means to go; `catchMm` 0 catches nothing. */
export function aimAt(held: HeldRun, z: number, catchMm: number): Aim {
  const falls = held.bar.fallMm > 0;
  const places = [
    ...(falls ? [] : held.levels.map((l) => atLevel(held, l))),
    ...held.passing.flatMap((p) => justClear(held, p)),
  ];
  let best: Aim | null = null;
  for (const aim of places) {
    const off = Math.abs(aim.z - z);
    if (off <= catchMm && (best === null || off < Math.abs(best.z - z))) best = aim;
  }
  return best ?? { z: Math.round((z - held.floor) / STEP_MM) * STEP_MM + held.floor, height: null, caught: null };
}

/** "under the heating flow 22 by 12 clear", or nothing where it passes nothing. */
export const sayHeld = (held: HeldRun, z: number): string | null => sayClear(z, held.radius, held.passing);

/** Free end of the leg: what is told a height. A tail has the height of its point. */
const freeEnd = (plan: Plan, leg: string): string | undefined => {
  const record = plan.legs[leg];
  return record && [record.a, record.b].find((n) => plan.nodes[n]?.place.on === 'storey');
};

/** Carries it out as one step. A height of the house is told as that; anything else keeps what it was told from. */
export function setAim(editor: Editor, bar: RibbonBar, aim: Pick<Aim, 'z' | 'height'>): Outcome | null {
  const { plan } = editor.store.getState();
  const node = freeEnd(plan, bar.leg);
  if (aim.height && node !== undefined && bar.fallMm === 0) {
    return editor.run('node.height', { node, height: aim.height });
  }
  const by = aim.z - bar.z;
  return Math.abs(by) < STILL_MM ? null : editor.run('leg.move', { leg: bar.leg, by: { x: 0, y: 0, z: by } });
}
