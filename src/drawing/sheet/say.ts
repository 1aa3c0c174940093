import type { Case, Plan } from '../../plan/plan.ts';
import type { Report } from '../../report/report.ts';

export const NOT_TOLD = 'not told';
export const told = (text: string | null | undefined): string => (text?.trim() ? text.trim() : NOT_TOLD);

/** "before the work", "after, option A". */
export function sayCase(plan: Plan, chosen: Case): string {
  if (chosen.when === 'before') return 'before the work';
  const name = plan.options[chosen.option ?? '']?.name ?? '';
  return name === '' ? 'after the work' : `after the work, option ${name}`;
}

/** A scale as it is written: 1:50. */
export const sayScale = (scale: number): string => `1:${scale}`;

const WAYS = ['east', 'north-east', 'north', 'north-west', 'west', 'south-west', 'south', 'south-east'] as const;

/** The way a direction of the plan points, north being up. */
export function sayWay(x: number, y: number): string {
  const eighth = Math.round((Math.atan2(y, x) * 4) / Math.PI);
  return WAYS[((eighth % 8) + 8) % 8] ?? 'north';
}

/** The caution is on every sheet already. */
const CAUTION = /registered engineer/;

/** Everything the sums took for granted, then how they read their tables; each said once. */
export function assumptionsOf(report: Report): string[] {
  const rows = report.sections.flatMap((s) => s.rows);
  const assumed = rows.flatMap((r) => (r.kind === 'assumed' ? [r.say] : []));
  const derived = rows.flatMap((r) => (r.kind === 'note' && !CAUTION.test(r.say) ? [r.say] : []));
  return [...new Set([...assumed, ...derived])];
}

/** What the sums rest on, in short lines. */
export function sayBasis(plan: Plan): string[] {
  const { basis } = plan;
  const value = basis.calorificValueMJPerM3;
  return [
    `${basis.gas === 'propane' ? 'propane' : 'natural gas'}, ${value === null ? 'usual heat value' : `${value} MJ/m³`}`,
    basis.surveyDate === null ? 'day of survey not told' : `surveyed ${basis.surveyDate}`,
  ];
}

/** How the heights of a storey are told. */
export function sayDatum(plan: Plan, storey: string): string | null {
  const record = plan.storeys[storey];
  if (!record) return null;
  const level = record.floorMm;
  const where = level === 0 ? 'which is the datum' : `${Math.abs(level)} ${level > 0 ? 'over' : 'under'} the datum`;
  return `Heights in mm over the finished floor of ${record.name}, ${where}.`;
}
