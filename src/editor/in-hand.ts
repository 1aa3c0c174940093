import { services } from '../catalogue/services.ts';
import { resolveHeight } from '../geometry/heights.ts';
import type { Plan } from '../plan/plan.ts';
import type { HeightRef } from '../plan/records/parts.ts';
import type { AssumedMm, Assumptions, BankPipeInHand, InHand } from './editor-api.ts';

/** A height above the floor or the ceiling of a storey that nobody measured. */
export function assumedFrom(from: 'floor' | 'ceiling', of: string, height: AssumedMm): HeightRef {
  const { mm, lo, hi } = height;
  return { from, of, mm, ...(lo === hi ? {} : { assumed: { lo, hi } }) };
}

/** Tube and joining that a service is laid in unless told otherwise. */
export function pipeOf(service: string): Pick<InHand, 'tube' | 'joining'> {
  const kind = services.get(service);
  return kind
    ? { tube: { ...kind.defaultTube }, joining: kind.defaultJoining }
    : { tube: { kind: 'copper', size: null }, joining: null };
}

/** What hangs on every boiler that heats water itself; the user puts it right before the first bank. */
const START_BANK = ['gas', 'heatingFlow', 'heatingReturn', 'cold', 'hot'];
const START_SPACING_MM = 75;

/** A pipe of a bank as its service is laid unless told otherwise. */
export const bankPipe = (service: string): BankPipeInHand => ({ service, ...pipeOf(service), turns: 'elbow' });

export function startInHand(storey: string, assumptions: Assumptions): InHand {
  return {
    service: 'gas',
    ...pipeOf('gas'),
    turns: 'elbow',
    height: { from: 'floor', of: storey, mm: assumptions.skirting.mm },
    goesOn: null,
    pointKind: 'boiler',
    thing: null,
    photo: null,
    itemKind: 'isolation-valve',
    openingKind: 'door',
    voidKind: 'ceiling',
    voidTask: 'room',
    joist: null,
    centresMm: null,
    joistDepthMm: null,
    boxDepthMm: null,
    wallThicknessMm: assumptions.wallThicknessMm,
    wallConstruction: 'block',
    sizes: 'inside',
    roomUse: '',
    groundKind: '',
    step: { kind: 'passover', goes: 'aside', angleDeg: 45 },
    follow: null,
    bank: { members: START_BANK.map(bankPipe), spacingMm: START_SPACING_MM, row: 'level' },
    trace: null,
  };
}

/** On another floor the height in hand is the same height above that floor. */
export function onStorey(inHand: InHand, plan: Plan, storey: string): InHand {
  const { height } = inHand;
  const moved: HeightRef =
    height.from === 'floor' || height.from === 'ceiling'
      ? { ...height, of: storey }
      : { from: 'floor', of: storey, mm: (resolveHeight(plan, height)?.z ?? 0) - (plan.storeys[storey]?.floorMm ?? 0) };
  return { ...inHand, height: moved };
}
