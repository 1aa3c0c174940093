import { issueSheets } from '../../drawing/sheet/issue.ts';
import { layoutOf, PAPERS, type Paper, paperOf } from '../../drawing/sheet/paper.ts';
import type { Sheet, SheetChoice, SheetJob } from '../../drawing/sheet/sheet.ts';
import { kindOf } from '../../drawing/sheet/sheet-kinds.ts';

/** What was chosen on the print screen; what is not in it is as usual. */
export interface PrintChoices {
  readonly paper: string;
  readonly on: Readonly<Record<string, boolean>>;
  readonly scales: Readonly<Record<string, number>>;
}

const PAPER_KEY = 'kickset.paper';

/** The paper that was last printed on from this device. */
export function storedPaper(): string {
  try {
    const kept = localStorage.getItem(PAPER_KEY);
    if (kept !== null && paperOf(kept)) return kept;
  } catch {
    // A closed storage has nothing to tell.
  }
  return 'A4-across';
}

export function keepPaper(id: string): void {
  try {
    localStorage.setItem(PAPER_KEY, id);
  } catch {
    // It holds until the page is closed.
  }
}

export const paperChosen = (choices: PrintChoices): Paper => paperOf(choices.paper) ?? (PAPERS[0] as Paper);

export const isOn = (choices: PrintChoices, c: SheetChoice): boolean => choices.on[c.key] ?? c.usual;

export const sheetsChosen = (job: SheetJob, all: readonly SheetChoice[], choices: PrintChoices): Sheet[] =>
  issueSheets(job, {
    paper: paperChosen(choices),
    keys: all.filter((c) => isOn(choices, c)).map((c) => c.key),
    scales: choices.scales,
  });

export interface ScaleChoice {
  readonly scale: number;
  /** On how many sheets the drawing stands at it. */
  readonly sheets: number;
}

/** A kept way to part a drawing over at most this many sheets is worth offering. */
const MOST_SHEETS = 16;

/** The scales a drawing may be printed at, largest first, and the one it is printed at. */
export function scalesOf(job: SheetJob, choice: SheetChoice, choices: PrintChoices): readonly ScaleChoice[] {
  const layout = layoutOf(paperChosen(choices));
  const kind = kindOf(choice.key);
  if (!kind) return [];
  return [...choice.scales]
    .sort((a, b) => a - b)
    .map((scale) => ({ scale, sheets: kind.pages(job, choice.key, layout, scale).length }))
    .filter(({ sheets }) => sheets > 0 && sheets <= MOST_SHEETS);
}

/** The scale it comes out at. */
export function scaleNow(job: SheetJob, choice: SheetChoice, choices: PrintChoices): number | null {
  const layout = layoutOf(paperChosen(choices));
  const [first] = kindOf(choice.key)?.pages(job, choice.key, layout, choices.scales[choice.key] ?? null) ?? [];
  return first?.head.scale ?? null;
}
