import type { Line } from '../../report/piece.ts';
import { type CsvCell, type CsvShape, csv } from './csv.ts';
import { byFamily, FAMILY_NAMES, sayJoining, sayMoved } from './list-lines.ts';

const HEADS = [
  'Group',
  'Drawn',
  'Changed to',
  'Unit',
  'Ask for',
  'Size',
  'Joining',
  'Piece',
  'Note',
  'Not decided',
  'Unverified',
  'Runs',
] as const;

/** What is written for a run; its id where nothing better is known. */
export type SayRun = (run: string) => string;

function row(line: Line, group: string, sayRun: SayRun): CsvCell[] {
  const notes = [line.note, line.edited?.note ?? '', sayMoved(line)].filter((note) => note !== '');
  return [
    group,
    line.quantity,
    line.edited?.quantity ?? null,
    line.unit,
    line.asked,
    line.size,
    sayJoining(line.joining),
    line.name,
    notes.join('; '),
    line.unresolved,
    line.unverified,
    line.runs.map(sayRun).join('; '),
  ];
}

/** The list as a sheet: what the drawing gives and what was changed by hand stand side by side. */
export function listCsv(lines: readonly Line[], shape: CsvShape = {}, sayRun: SayRun = (run) => run): string {
  const rows = byFamily(lines).flatMap(([family, of]) => of.map((line) => row(line, FAMILY_NAMES[family], sayRun)));
  return csv([HEADS, ...rows], shape);
}
