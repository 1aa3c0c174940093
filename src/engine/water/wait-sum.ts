import type { Known } from '../../reference/figure.ts';
import type { TubeSize } from '../../reference/tubes.ts';
import type { Quantity } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { cannot, citesOf, figures, quantityOf, step } from '../gas/said.ts';
import { contentOf } from './content.ts';
import { easeOf, WAIT, waitFor } from './wait.ts';

export interface WaitSumAsk {
  readonly tube: TubeSize;
  readonly lengthM: Quantity;
  /** litres a minute. */
  readonly flow: Quantity;
  readonly lights: boolean;
}

/** "within it", "over it", or that its doubt goes over the bound. */
const held = (wait: Quantity, most: number): string =>
  wait.hi !== null && wait.hi <= most ? 'within it' : wait.lo > most ? 'over it' : 'within it or over it';

const reading = (label: string, wait: Quantity, most: Known): WorkingStep =>
  step(label, `${figures(wait)} s is ${held(wait, most.lo)}`, quantityOf(most), citesOf(most.cite));

/** Seconds to hot water through one size of pipe, with its litres, held against both wordings of the rule. */
export function waitSum({ tube, lengthM, flow, lights }: WaitSumAsk): Working {
  const title = 'Wait for hot water';
  const litres = contentOf(lengthM, tube.kind, tube.size);
  if (litres === null) return cannot(title, [`the bore of ${tube.kind} ${tube.label}`]);
  const content = step('Water in the pipe', `${figures(lengthM)} m of ${tube.label}`, litres, citesOf(tube.cite));
  const working = waitFor({ litres, flow, lights });
  const wait = working.result;
  if (wait === null) return cannot(title, working.missing, [content]);
  return {
    ...working,
    steps: [
      content,
      ...working.steps,
      reading('One reading of the rule', wait, WAIT.first),
      reading('Another wording', wait, WAIT.other),
      step(
        'As it is called',
        easeOf(wait) ?? 'over a bound in its doubt',
        null,
        citesOf(WAIT.good.cite, WAIT.poor.cite),
      ),
    ],
  };
}
