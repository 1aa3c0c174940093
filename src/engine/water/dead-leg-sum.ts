import { type Figure, figure } from '../../reference/figure.ts';
import type { TubeSize } from '../../reference/tubes.ts';
import { exact } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { cannot, citesOf, quantityOf, step } from '../gas/said.ts';
import { bareLimit } from './bare-length.ts';
import { contentOf } from './content.ts';

export interface DeadLegAsk {
  readonly tube: TubeSize;
  readonly lengthM: number;
  /** A hot tap that water waits for, or a capped end that nothing draws from. */
  readonly end: 'tap' | 'capped';
}

const MM = 1000;

/** One line of a limit in metres: what it is, and how the length stands to it. */
function against(label: string, lengthM: number, most: Figure): WorkingStep {
  if (most.is !== 'known') return step(label, 'no figure for this size', null);
  const over = lengthM > most.lo ? `${lengthM} m is over it` : `${lengthM} m is within it`;
  return step(label, over, quantityOf(most), citesOf(most.cite));
}

function limits({ tube, lengthM, end }: DeadLegAsk): { steps: WorkingStep[]; notes: string[] } {
  if (end === 'capped') {
    const stub = figure('hot-lagging-limits', 'stub', 'mm');
    if (stub.is !== 'known') return { steps: [step('The tee itself', 'no figure', null)], notes: [] };
    const metres: Figure = { ...stub, lo: stub.lo / MM, hi: (stub.hi ?? stub.lo) / MM, value: stub.lo / MM };
    return {
      steps: [against('A stub as long as the tee itself', lengthM, { ...metres, unit: 'm', digits: 2 })],
      notes: ['a pipe that nothing draws from is cut back to its tee, however short'],
    };
  }
  const { byDiameter, byBore } = bareLimit(tube);
  return {
    steps: [
      against('Longest bare, by outside diameter', lengthM, byDiameter),
      ...(byBore ? [against('Longest bare, the rule read by bore', lengthM, byBore)] : []),
    ],
    notes: ['the length that may go without insulation; insulated it may be longer, and is still waited for'],
  };
}

/** Litres that stand in a dead leg, and its length against the limits there are, by both readings where they differ. */
export function deadLegSum(ask: DeadLegAsk): Working {
  const title = 'Water in a dead leg';
  const { tube, lengthM } = ask;
  if (!(lengthM >= 0)) return cannot(title, ['a length']);
  const litres = contentOf(exact(lengthM, 'm', 1, 'page'), tube.kind, tube.size);
  const { steps, notes } = limits(ask);
  if (litres === null) return cannot(title, [`the bore of ${tube.kind} ${tube.label}`], steps);
  const content = step('Water in it', `${lengthM} m of ${tube.label}`, litres, citesOf(tube.cite));
  return { title, steps: [content, ...steps], result: litres, missing: [], assumed: notes };
}
