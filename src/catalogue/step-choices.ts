import { figure } from '../reference/figure.ts';

/** Figures offered as keys for steps and for pipe that follows something, mm and degrees, least first. */
export interface StepChoices {
  readonly offsetMm: readonly number[];
  readonly kickMm: number;
  readonly overMm: number;
  /** Straight left between a kick or swan neck and the end it is near. */
  readonly endMm: number;
  readonly elbowDeg: readonly number[];
  readonly bendDeg: readonly number[];
  readonly offWallMm: readonly number[];
  readonly offRunMm: readonly number[];
}

const COLUMNS = ['first', 'second', 'third', 'fourth'] as const;

function offered(what: string): number[] {
  return COLUMNS.flatMap((column) => {
    const found = figure('step-choices', what, column);
    return found.is === 'known' ? (found.value ?? found.lo) : [];
  });
}

function first(what: string): number {
  const [only] = offered(what);
  if (only === undefined) throw new Error(`no usual figure for "${what}"`);
  return only;
}

let choices: StepChoices | undefined;

export function stepChoices(): StepChoices {
  choices ??= {
    offsetMm: offered('offset'),
    kickMm: first('kick'),
    overMm: first('over'),
    endMm: first('end'),
    elbowDeg: offered('elbow angle'),
    bendDeg: offered('bend angle'),
    offWallMm: offered('off wall'),
    offRunMm: offered('off run'),
  };
  return choices;
}
