import type { Plan } from './plan.ts';

export interface EmptyPlanChoices {
  readonly id: string;
  readonly name: string;
  readonly storey: string;
  readonly option: string;
  /** From the table of assumed heights; the storey is marked assumed until somebody measures it. */
  readonly ceilingMm: number;
  readonly buildUpMm: number;
}

/** A page with one assumed storey and one option, on which a run can be told before any wall is drawn. */
export function emptyPlan(choices: EmptyPlanChoices): Plan {
  return {
    id: choices.id,
    name: choices.name,
    job: { address: '', customer: '', owner: '', reason: '', note: '' },
    basis: {
      surveyDate: null,
      gas: 'natural',
      calorificValueMJPerM3: null,
      editions: {},
      designFlowC: null,
      designReturnC: null,
    },
    storeys: {
      [choices.storey]: {
        id: choices.storey,
        name: 'Ground floor',
        floorMm: 0,
        ceilingMm: choices.ceilingMm,
        buildUpMm: choices.buildUpMm,
        sureness: 'assumed',
      },
    },
    walls: {},
    openings: {},
    rooms: {},
    roofs: {},
    grounds: {},
    voids: {},
    points: {},
    runs: {},
    nodes: {},
    legs: {},
    stretches: {},
    items: {},
    groups: {},
    options: { [choices.option]: { id: choices.option, name: 'A', note: '', fates: {} } },
    acknowledgements: {},
    overrides: {},
    listEdits: {},
    things: {},
    blobRefs: {},
  };
}
