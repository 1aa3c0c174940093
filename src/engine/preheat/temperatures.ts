import type { Point } from '../../plan/records/pipework.ts';
import { constant } from '../../reference/figure.ts';
import type { Given } from '../given.ts';

export const STATES = ['high', 'hot', 'lukewarm', 'cold'] as const;
export type StateId = (typeof STATES)[number];

export interface Temperature {
  readonly c: number;
  /** Told on the drawing or in the basis; else it is the table's. */
  readonly told: boolean;
}

export const celsius = (field: unknown): number | null =>
  typeof field === 'number' && Number.isFinite(field) ? field : null;
const usual = (row: string): number => constant('preheat-temperatures', row);
const orUsual = (told: number | null | undefined, row: string): Temperature =>
  told === null || told === undefined ? { c: usual(row), told: false } : { c: told, told: true };

/** The cold that is blended in, from the main. */
export const coldOf = (given: Given): Temperature => orUsual(given.plan.basis.coldC, 'cold');

/** What a vessel's water is in each state; where nobody told, what is usual, and at its worst what opens its safety valve. */
export function temperaturesOf(given: Given, vessel: Point): Readonly<Record<StateId, Temperature>> {
  const { fields } = vessel;
  return {
    high: orUsual(celsius(fields.highestC), 'safety valve'),
    hot: orUsual(celsius(fields.hotC), 'hot'),
    lukewarm: orUsual(celsius(fields.lukewarmC), 'lukewarm'),
    cold: orUsual(celsius(fields.coldC) ?? given.plan.basis.coldC, 'cold'),
  };
}

/** What a heater heats to: as the basis says, else what a store, or a boiler that heats as it flows, is bound to reach. */
export const heaterSet = (given: Given, heater: Point): Temperature =>
  orUsual(given.plan.basis.hotC, heater.kind === 'boiler' ? 'combi set' : 'cylinder set');

/** Of a shower as it is used. */
export const showerC = (): number => usual('shower');
