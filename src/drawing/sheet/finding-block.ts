import type { Plan } from '../../plan/plan.ts';
import type { Finding } from '../../report/finding.ts';
import type { Report } from '../../report/report.ts';
import type { Prim } from '../paint/prim.ts';
import { findingMark, sayFound, saySeen } from './finding-words.ts';
import type { Block } from './flow.ts';
import { box, type Piece, paragraph, rule, SHEET_TEXT } from './ink.ts';

const MARK_MM = 8;
const SEEN_PAD_MM = 1.2;

const OUTCOME: Readonly<Record<Finding['outcome'], string>> = {
  stop: 'Stop',
  check: 'Check',
  note: 'Note',
  cantTell: "Can't tell",
};

interface Line {
  readonly text: string;
  readonly size?: number;
  readonly weight?: 400 | 600;
}

/** The outcome in a word, where the title does not say it itself. */
const titled = (f: Finding): string =>
  f.title.startsWith(OUTCOME[f.outcome]) ? f.title : `${OUTCOME[f.outcome]}: ${f.title}`;

function linesOf(f: Finding, report: Report): Line[] {
  const titleOf = (source: string): string => report.sources.find((s) => s.id === source)?.title ?? source;
  const cites = f.cites.map((c) => `${titleOf(c.source)}, ${c.clause}`);
  const lines: Line[] = [
    { text: titled(f), size: SHEET_TEXT.title, weight: 600 },
    { text: sayFound(f), weight: 600 },
    { text: f.why },
    { text: f.todo, weight: 600 },
    { text: f.more > 0 ? `At ${f.more} more ${f.more === 1 ? 'place' : 'places'}.` : '' },
    { text: f.unverified ? 'Unverified: a figure in this was not read on its page.' : '' },
    { text: [...new Set(cites)].join('; '), size: SHEET_TEXT.caption },
  ];
  return lines.filter((l) => l.text.trim() !== '');
}

/** What was said of it, in a frame of its own. A stop of law or life safety stays a stop whatever was said. */
function seenPiece(plan: Plan, f: Finding, x: number, y: number, w: number): Piece | null {
  const seen = saySeen(plan, f);
  if (seen === null) return null;
  const still =
    f.outcome === 'stop' && f.lifeSafety ? ' Law or life safety: this note does not take the stop away.' : '';
  const text = paragraph(`${seen}${still}`, { x: x + SEEN_PAD_MM, y: y + SEEN_PAD_MM, w: w - 2 * SEEN_PAD_MM });
  const h = text.h + 2 * SEEN_PAD_MM;
  return { prims: [box({ x, y, w, h }, 0.2), ...text.prims], h: h + 1 };
}

/** A finding in full: mark, what, found and wanted, why, what to do, source; and who has seen it. */
export function findingBlock(plan: Plan, report: Report, f: Finding, name: string, w: number): Block {
  const lay = (x: number, y: number): Piece => {
    const prims: Prim[] = findingMark(f.outcome, name, x + 2.8, y + 2.8);
    const left = x + MARK_MM;
    const wide = w - MARK_MM;
    let down = y + 0.6;
    for (const line of linesOf(f, report)) {
      const piece = paragraph(line.text, { ...line, x: left, y: down, w: wide });
      prims.push(...piece.prims);
      down += piece.h + 0.5;
    }
    const seen = seenPiece(plan, f, left, down + 0.6, wide);
    if (seen) {
      prims.push(...seen.prims);
      down += seen.h + 0.6;
    }
    down += 2;
    prims.push(rule([x, down], [x + w, down], 0.1));
    return { prims, h: down + 2.4 - y };
  };
  return { h: lay(0, 0).h, draw: (x, y) => lay(x, y).prims };
}
