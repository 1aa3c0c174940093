import type { TubeSize } from '../../reference/tubes.ts';
import { exact, type Quantity, sayFigures } from '../../report/quantity.ts';
import type { Working, WorkingStep } from '../../report/working.ts';
import { cannot, citesOf, step } from '../gas/said.ts';
import { roughnessOf } from '../hydraulics/tube-loss.ts';
import { waterAt } from '../hydraulics/water.ts';
import { type DesignTemps, designFlow, litresPerMin } from './design-flow.ts';
import { pipeLoss } from './section-loss.ts';
import { scaled } from './spread.ts';

export interface FlowAsk {
  readonly kW: number;
  readonly temps: DesignTemps;
  /** Parts of a hundred on top, for what the pipes lose on the way. */
  readonly extraPercent: number;
  /** A pipe that all of it goes through. */
  readonly tube: TubeSize | null;
  /** Where a temperature was not told. */
  readonly assumed: readonly string[];
}

const TITLE = 'Flow of a heat';
const WATER = { source: 'liquid-water-release', clause: 'density and heat capacity', table: 'water-terms' };
const FRICTION = { source: 'fluid-mechanics-texts', clause: 'Churchill 1977, Darcy form', table: 'friction-churchill' };

function pipeSteps(flow: Quantity, tube: TubeSize, tC: number): WorkingStep[] {
  const nothing = exact(0, 'm', 1);
  const bore = tube.boreMm;
  const loss =
    bore === null || roughnessOf(tube.kind) === null
      ? null
      : pipeLoss({ flow, tubeKind: tube.kind, boreMm: bore, tC, lengthM: nothing, fittingsM: nothing, kvs: [] });
  if (loss === null) return [step(`In ${tube.label}`, 'its bore or its roughness is not known', null)];
  return [
    step(`Velocity in ${tube.label}`, `bore ${bore} mm, water of ${tC} degrees`, loss.velocity, citesOf(tube.cite)),
    step(`Loss of a metre of ${tube.label}`, `${loss.regime} flow`, loss.paPerM, citesOf(FRICTION)),
  ];
}

/** kg/s of water that carry a heat from flow to return, and what that is by volume and in a pipe. */
export function flowSum(ask: FlowAsk): Working {
  const { flowC, returnC } = ask.temps;
  const mean = (flowC + returnC) / 2;
  const water = waterAt(mean);
  if (flowC <= returnC) return cannot(TITLE, ['a flow that is warmer than the return']);
  if (water === null) return cannot(TITLE, ['temperatures at which the figures of water hold']);
  const heat = scaled(exact(ask.kW, 'kW', 2, 'page'), 1 + ask.extraPercent / 100);
  const flow = designFlow(heat, ask.temps);
  const perMin = flow && litresPerMin(flow, mean);
  if (flow === null || perMin === null) return cannot(TITLE, ['temperatures at which the figures of water hold']);
  const cp = water.cpKJPerKgK.toFixed(3);
  return {
    title: TITLE,
    steps: [
      ...(ask.extraPercent > 0
        ? [step('Heat with that of the pipes', `${ask.kW} kW and ${ask.extraPercent} %`, heat)]
        : []),
      step('Flow', `${sayFigures(heat)} kW / (${cp} kJ/kgK x ${flowC - returnC} K)`, flow, [WATER]),
      step('By volume', `${water.densityKgM3.toFixed(1)} kg/m3 at ${mean} degrees`, perMin, [WATER]),
      step('In an hour', 'x 60', scaled(perMin, 60, 'litres/h', 0)),
      ...(ask.tube === null ? [] : pipeSteps(flow, ask.tube, mean)),
    ],
    result: flow,
    missing: [],
    assumed: ask.assumed,
  };
}
