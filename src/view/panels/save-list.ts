import { listCsv } from '../../files/format/list-csv.ts';
import type { Plan } from '../../plan/plan.ts';
import type { Report } from '../../report/report.ts';
import { fileName } from '../app/hand-over.ts';
import { nameOf } from './name-of.ts';

type Save = (name: string, type: string, text: string) => void;

/** The list as a sheet of comma separated values, handed to the device. */
export function saveListCsv(plan: Plan, report: Report, save: Save): void {
  const text = listCsv(report.lines, {}, (id) => nameOf(plan, { map: 'runs', id }));
  save(fileName(plan.name, '-list.csv'), 'text/csv;charset=utf-8', text);
}
