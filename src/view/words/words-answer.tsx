import { sayFigures } from '../../report/quantity.ts';
import { useEditor, useReport } from '../app/use-session.ts';
import { Bar } from '../panels/bar.tsx';
import { choose } from '../panels/choose.ts';
import { STATE_WORD, sayUnit, sayWithUnit } from '../panels/rows/figures.ts';
import { StateMark } from '../panels/rows/state-mark.tsx';
import { type AnswerColumn, wordsAnswer } from './answer-columns.ts';

/** The answer in large type: three sizes side by side, one line of working, what was assumed. */
export function WordsAnswer({ run }: { readonly run: string | null }) {
  const report = useReport((s) => s.report);
  const waiting = useReport((s) => s.waiting);
  const answer = wordsAnswer(report);
  const facts = run === null ? undefined : report?.runs.find((r) => r.run === run);
  if (run === null || !answer || answer.columns.length === 0) {
    return (
      <section className="words-answer" aria-label="Answer">
        <p className="words-none">
          {facts
            ? `${sayWithUnit(facts.lengthM)}, ${facts.bends}`
            : 'Say where it starts, which way it goes and where it ends.'}
        </p>
      </section>
    );
  }
  const [first] = answer.working;
  const [said, ...more] = answer.assumed;
  return (
    <section className={`words-answer${waiting ? ' paler' : ''}`} aria-label="Answer">
      <div className="columns">
        {answer.columns.map((c) => (
          <Column key={c.size} column={c} unit={answer.unit} />
        ))}
      </div>
      {first && (
        <p className="words-working">
          <span className="how">{`${first.label}: ${sayUnit(first.how)}`}</span>
          {answer.limit !== null && `; limit ${answer.limit.toFixed(2)}, gas drop in ${answer.unit}`}
        </p>
      )}
      {said !== undefined && (
        <p className="row-assumed">
          assumed: {said}
          {more.length > 0 && ` and ${more.length} more`}
        </p>
      )}
    </section>
  );
}

function Column({ column, unit }: { readonly column: AnswerColumn; readonly unit: string }) {
  const editor = useEditor();
  const { row, size } = column;
  const figures = row.figure === null ? "can't tell" : sayFigures(row.figure);
  const spoken = `${size}: ${figures} ${unit}, ${STATE_WORD[row.state]}${row.room === null ? '' : `, ${row.room}`}`;
  return (
    <button
      type="button"
      className={`column${row.chosen ? ' chosen' : ''} is-${row.state}`}
      aria-pressed={row.chosen}
      aria-label={spoken}
      onClick={() => {
        if (!row.chosen) choose(editor, row);
      }}
    >
      <span className="column-head">
        <span className="column-size">{size}</span>
        <StateMark state={row.state} />
      </span>
      <span className={`column-figures state-${row.state}`}>{figures}</span>
      <span className="column-bar">{row.bar && <Bar bar={row.bar} middle />}</span>
      <span className={`column-room state-${row.state}`}>{row.room ?? ''}</span>
    </button>
  );
}
