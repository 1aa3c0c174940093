import { exact } from '../../report/quantity.ts';
import type { Working } from '../../report/working.ts';
import { cannot, step } from '../gas/said.ts';
import { blendC } from './blend.ts';
import { kwAt } from './heat-added.ts';

export interface PreheatAsk {
  readonly lPerMin: number;
  readonly preheatC: number;
  readonly coldC: number;
  readonly setC: number;
  /** How much of the inlet comes from the vessel; the rest is cold. */
  readonly share: number;
}

/** Inlet of a heater behind a preheat, and the power it still has to add, kW. Nothing where the inlet is warm enough. */
export function preheatSum({ lPerMin, preheatC, coldC, setC, share }: PreheatAsk): Working {
  const title = 'What a heater still adds to preheated water';
  if (!(share >= 0 && share <= 1)) return cannot(title, ['a share between 0 and 1']);
  if (!(lPerMin > 0)) return cannot(title, ['a flow']);
  const inlet = blendC(share, preheatC, coldC);
  const how = share === 1 ? 'all of it preheated' : `${share} x ${preheatC} + ${(1 - share).toFixed(2)} x ${coldC}`;
  const steps = [step('Inlet', how, exact(inlet, '°C', 1))];
  const kw = kwAt(lPerMin, inlet, setC);
  if (kw === null) return cannot(title, ['water between 0 and 100 °C'], steps);
  const result = exact(kw, 'kW', 1);
  const added = step(
    'Still added',
    `${lPerMin} litres a minute x heat of water x ${Math.max(0, setC - inlet).toFixed(1)} K`,
    result,
    [{ source: 'own-sums', clause: 'flow x heat capacity x rise' }],
  );
  const leaves = step(
    'Leaves the heater',
    inlet >= setC ? 'hotter than it is set to: the heater stays off' : 'as it is set',
    exact(Math.max(inlet, setC), '°C', 1),
  );
  return {
    title,
    steps: [...steps, added, leaves],
    result,
    missing: [],
    assumed: inlet > setC ? ['a mixing valve holds back what is too hot: without one it scalds'] : [],
  };
}
