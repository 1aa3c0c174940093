import type { Plan } from '../../plan/plan.ts';
import { acknowledged } from '../../report/acknowledged.ts';
import type { Finding } from '../../report/finding.ts';
import { sayQuantity } from '../../report/quantity.ts';
import { sheetFrame } from '../paint/frame.ts';
import type { Prim } from '../paint/prim.ts';
import { primsOf } from '../paint/prims-of.ts';
import { PRINT } from './ink.ts';

/** The mark of a finding with its letter and number, its middle at a place of the sheet. */
export const findingMark = (outcome: Finding['outcome'], name: string, x: number, y: number): Prim[] =>
  primsOf(
    { t: 'mark', mark: `finding:${outcome}`, at: [0, 0], turnDeg: 0, ink: 'ink1', text: name },
    sheetFrame(1, [0, 0], [x, y]),
    PRINT,
  );

/** "found 10 mm, wanted at least 47 mm"; what is missing where that is why it cannot be told. */
export function sayFound(f: Finding): string {
  const found = f.found ? `found ${sayQuantity(f.found)}` : '';
  const bound = f.wantedIs === 'atLeast' ? 'at least ' : f.wantedIs === 'atMost' ? 'at most ' : '';
  const wanted = f.wanted ? `wanted ${bound}${sayQuantity(f.wanted)}` : '';
  const missing = f.missing.length > 0 ? `not told: ${f.missing.join(', ')}` : '';
  return [found, wanted, missing].filter((t) => t !== '').join(', ');
}

/** Who saw it, when, and why it may stay. Null where nobody said anything. */
export function saySeen(plan: Plan, f: Finding): string | null {
  const seen = acknowledged(plan, f);
  if (!seen) return null;
  const { by, on, note } = seen.said;
  const who = [by.trim() === '' ? 'by: not told' : `by ${by.trim()}`, on ?? 'day not told'].join(', ');
  const head = seen.worse ? 'Worse than when it was seen' : 'Seen';
  const last = note.trim() === '' ? 'no note' : note.trim();
  return `${head} ${who}: ${last}`;
}
