import type { Plan } from '../../plan/plan.ts';
import type { Report } from '../../report/report.ts';
import { fileName } from '../app/hand-over.ts';
import { quantityOf, sayLine } from './list-text.ts';

const cell = (text: string): string => (/[",\n\r]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text);

/** The list as comma separated values, one line a piece. */
export function listCsv(report: Report): string {
  const head = ['quantity', 'unit', 'size', 'piece', 'joining', 'asked', 'by the drawing', 'note'];
  const rows = report.lines.map((l) => [
    String(quantityOf(l)),
    l.unit,
    l.size,
    sayLine(l),
    l.joining,
    l.asked,
    String(l.quantity),
    [l.edited?.note ?? '', l.unresolved ?? '', l.unverified ? 'unverified' : ''].filter((t) => t !== '').join('; '),
  ]);
  return `${[head, ...rows].map((r) => r.map(cell).join(',')).join('\r\n')}\r\n`;
}

type Save = (name: string, type: string, text: string) => void;

export function saveListCsv(plan: Plan, report: Report, save: Save): void {
  save(fileName(plan.name, '-list.csv'), 'text/csv;charset=utf-8', listCsv(report));
}
