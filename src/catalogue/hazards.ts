/** Something that hurts whoever drills into it. */
export interface Hazard {
  readonly id: string;
  readonly label: string;
  /** Letters beside its warning triangle. */
  readonly letter: string;
  /** What to do before anybody touches it, in one sentence. */
  readonly caution: string;
}

/** What may be pinned, the worst first. Habits of the trade and no limits: no figure stands here. */
export const hazards: readonly Hazard[] = [
  {
    id: 'asbestos',
    label: 'asbestos',
    letter: 'AS',
    caution:
      'Do not drill, break or strip it: have it sampled first, and leave its removal to those who are trained for it.',
  },
  {
    id: 'cables',
    label: 'cables',
    letter: 'EL',
    caution: 'Find them with a detector and isolate the circuit before anything is cut or drilled here.',
  },
  {
    id: 'lead',
    label: 'lead',
    letter: 'PB',
    caution:
      'Lead pipe or paint: no heat, no dry sanding; wash hands, and tell the owner where water still runs through it.',
  },
  {
    id: 'oldIron',
    label: 'old iron pipe',
    letter: 'FE',
    caution: 'It may break or leak when it is turned: test before and after, and have the means to cap it at hand.',
  },
  {
    id: 'other',
    label: 'other',
    letter: 'X',
    caution: 'Ask and look before working here.',
  },
];

/** The hazard of a choice; what nobody named is "other". */
export function hazardOf(what: unknown): Hazard {
  const found = hazards.find((h) => h.id === what) ?? hazards.at(-1);
  if (!found) throw new RangeError('there are no hazards');
  return found;
}
