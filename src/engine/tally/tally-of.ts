import type { Report } from '../../report/report.ts';
import type { Tally, TallyFigure } from '../../report/tally.ts';
import type { Given } from '../given.ts';
import { answerFigures } from './answer-figures.ts';
import { hiddenFigures } from './hidden-figures.ts';
import { holeFigures } from './hole-figures.ts';
import { pipeFigures } from './pipe-figures.ts';
import { workFigures } from './work-figures.ts';

/** The figures of one case that are compared with those of others. Pure, as the report is. */
export function tallyOf(given: Given, report: Report): Tally {
  const figures = [
    ...answerFigures(given, report),
    ...pipeFigures(given, report),
    ...hiddenFigures(given),
    ...holeFigures(given),
    ...workFigures(given),
  ];
  const chapters = new Set(report.sections.map((s) => `section:${s.id}`));
  // A chapter with nothing to say of this case is not there to be opened.
  const opens = (f: TallyFigure): boolean =>
    f.chapter === null || !f.chapter.startsWith('section:') || chapters.has(f.chapter);
  return { case: given.case, figures: figures.map((f) => (opens(f) ? f : { ...f, chapter: null })) };
}
