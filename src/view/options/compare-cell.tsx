import type { Case } from '../../plan/plan.ts';
import type { Outcome } from '../../report/finding.ts';
import type { State } from '../../report/section.ts';
import { type Standing, sayTally, type TallyFigure } from '../../report/tally.ts';
import { openChapter, screen } from '../app/screen.ts';
import { useEditor } from '../app/use-session.ts';
import { FindingMark, OUTCOME_WORD, Vial } from '../look/mark.tsx';
import { STATE_WORD, sayUnit } from '../panels/rows/figures.ts';

const isOutcome = (state: State): state is Outcome => state in OUTCOME_WORD;

/** The mark of a figure that is held against something; a note is none: the words under it say as much. */
function StateMark({ state }: { readonly state: State }) {
  if (state === 'pass') return <Vial width={26} />;
  return isOutcome(state) && state !== 'note' ? <FindingMark outcome={state} size={18} hidden /> : null;
}

interface Props {
  readonly cell: TallyFigure | null;
  readonly standing: Standing;
  readonly chosen: Case;
  /** Name of the column, for a screen reader: "A". */
  readonly column: string;
}

/** One figure of the table. It opens its chapter, in the case it belongs to. */
export function CompareCell({ cell, standing, chosen, column }: Props) {
  const editor = useEditor();
  if (cell === null) {
    return (
      <td className="compare-none">
        <span aria-hidden="true">–</span>
        <span className="out-of-sight">no figure</span>
      </td>
    );
  }
  const { figure, under } = sayTally(cell);
  const says = (
    <>
      <span className="compare-figure">
        <span className="compare-marked">
          <StateMark state={cell.state} />
          <span className="compare-said">{sayUnit(figure)}</span>
        </span>
        {standing === 'best' && <span className="compare-best">best</span>}
      </span>
      {under !== '' && <span className="compare-under">{under}</span>}
      {cell.state !== 'none' && <span className="out-of-sight">, {STATE_WORD[cell.state]}</span>}
    </>
  );
  const { chapter } = cell;
  if (chapter === null) {
    return (
      <td>
        <span className="compare-cell">{says}</span>
      </td>
    );
  }
  const open = (): void => {
    editor.setCase(chosen);
    editor.select([]);
    screen.setState({ over: null, finding: null });
    openChapter(chapter);
  };
  return (
    <td>
      <button type="button" className="compare-cell" title={`Open in ${column}`} onClick={open}>
        {says}
      </button>
    </td>
  );
}
