import type { Plan } from '../../plan/plan.ts';
import { constant, figure } from '../../reference/figure.ts';
import type { Cite } from '../../report/working.ts';
import type { DesignTemps } from '../heating/design-flow.ts';

export interface Temps extends DesignTemps {
  readonly differenceK: number;
  /** Said on screen where one of them was not told; null where both were. */
  readonly assumed: string | null;
  readonly cites: readonly Cite[];
}

const usual = (column: string): number => constant('heating-design', 'usual', column);

/** As told, else the usual pair; of one told the other by the usual difference, degrees. */
export function tempsOf(designFlowC: number | null, designReturnC: number | null): Temps {
  const both = designFlowC !== null && designReturnC !== null && designFlowC > designReturnC;
  const flowC = designFlowC ?? (designReturnC === null ? usual('flowC') : designReturnC + usual('differenceK'));
  const returnC = both ? designReturnC : flowC - usual('differenceK');
  const cite = figure('heating-design', 'usual', 'differenceK').cite;
  return {
    flowC,
    returnC,
    differenceK: flowC - returnC,
    assumed: both ? null : `designed for ${flowC} flow and ${returnC} return, ${flowC - returnC} K between them`,
    cites: both ? [] : [cite],
  };
}

/** Design temperatures of a job. */
export const designTemps = (plan: Plan): Temps => tempsOf(plan.basis.designFlowC, plan.basis.designReturnC);
