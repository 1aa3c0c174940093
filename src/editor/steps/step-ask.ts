import { stepChoices } from '../../catalogue/step-choices.ts';
import { comesBack, STEP_KINDS, type StepKind } from '../../network/steps/step-shape.ts';
import type { Ask, AskKey } from '../editor-api.ts';
import type { Proposal, Told } from './proposal.ts';
import type { Way } from './ways.ts';

export const KIND_LABELS: Readonly<Record<StepKind, string>> = {
  set: 'Set',
  passover: 'Passover',
  kick: 'Kick',
  swanNeck: 'Swan neck',
};

export const KIND_SAYS: Readonly<Record<StepKind, string>> = {
  set: 'Two bends: it carries on beside where it ran.',
  passover: 'Out, over and back.',
  kick: 'A small set near the end.',
  swanNeck: 'Out and back near the end.',
};

/** Angles the run can turn by: what is bent may take less than what fittings make. */
export const anglesOf = (turns: 'elbow' | 'bend'): readonly number[] =>
  turns === 'bend' ? stepChoices().bendDeg : stepChoices().elbowDeg;

export interface StepAsk {
  readonly told: Told;
  readonly ways: readonly Way[];
  readonly turns: 'elbow' | 'bend';
  /** Which of the two figures is typed, and what was typed of it; empty: as it is proposed. */
  readonly figure: 'offset' | 'over';
  readonly typed: string;
  /** Names of pipes under the finger, where there is more than one to choose from. */
  readonly others: number;
}

/** The pad of a step that is told by keys. */
export function stepAsk(of: StepAsk, proposal: Proposal | null): Ask {
  const { told, ways, turns, figure, typed, others } = of;
  const kinds = STEP_KINDS.map((k): AskKey => ({ key: `kind:${k}`, label: KIND_LABELS[k], on: k === told.kind }));
  const goes = ways.map((w): AskKey => ({ key: `way:${w.id}`, label: w.label, on: w.id === told.way.id }));
  const angles = anglesOf(turns).map(
    (deg): AskKey => ({ key: `angle:${deg}`, label: `${deg} degrees`, on: deg === told.angleDeg }),
  );
  const more: AskKey[] = [
    { key: 'figure:offset', label: 'offset', on: figure === 'offset' },
    ...(comesBack(told.kind) ? [{ key: 'figure:over', label: 'length over', on: figure === 'over' }] : []),
    ...(comesBack(told.kind) ? [] : [{ key: 'flip', label: 'other side goes', on: told.flipped }]),
    ...(others > 0 ? [{ key: 'other', label: 'the other pipe' }] : []),
  ];
  const says = [
    proposal?.laid.ok === false ? proposal.laid.why : (proposal?.figures ?? ''),
    ...(proposal?.word ? [`Goes ${proposal.word}.`] : [KIND_SAYS[told.kind]]),
  ].filter((line) => line !== '');
  return {
    title: figure === 'offset' ? `${KIND_LABELS[told.kind]}, offset` : `${KIND_LABELS[told.kind]}, length over`,
    figure: typed,
    unit: 'mm',
    says,
    rows: [kinds, goes, angles, more],
    enter: proposal?.laid.ok ? 'lay it' : null,
  };
}
